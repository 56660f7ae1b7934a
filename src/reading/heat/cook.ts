/** What a question about the cook says. */
import { type Claims, roomOf, t } from './claims.ts';

export interface CookReading {
  readonly temperatureC: number | null;
  readonly minutes: number | null;
  /** Of the batch, g. */
  readonly grams: number | null;
}

export function cookOf(claims: Claims): CookReading {
  roomOf(claims);
  const temperatureC = claims.temperature(' (?<t>T\\d+) ', ` (?:at|is|reads|hit|reached|showing|shows|says) ${t} `);
  const minutes = claims.take(
    ' (?:after|for|been|at|since) (?:[a-z]+ ){0,3}?(?<t>M\\d+) ',
    ' (?<t>M\\d+) (?:in|into|after|since|now|so|already|past|from) ',
    ' (?<t>M\\d+) ',
  );
  const grams = claims.take(
    ' (?<t>G\\d+) (?:(?:of|the|my|hot|process|hp|cooked) )*(?:soap|batch|batter|paste|mass) ',
    ' (?:batch|soap|batter) (?:(?:of|is|weighs|:|=|,) )*(?<t>G\\d+) ',
  );
  return { temperatureC, minutes: minutes?.value ?? null, grams: grams?.value ?? null };
}
