import { fold } from './clean.ts';

export type Prim =
  | { readonly kind: 'word'; readonly text: string; readonly raw: string; readonly glued: boolean; readonly at: number }
  | {
      readonly kind: 'number';
      readonly text: string;
      readonly raw: string;
      readonly glued: boolean;
      readonly at: number;
    }
  | { readonly kind: 'sign'; readonly text: string; readonly raw: string; readonly glued: boolean; readonly at: number }
  /** End of a line; `blank` where an empty line follows. */
  | {
      readonly kind: 'line';
      readonly text: string;
      readonly raw: string;
      readonly glued: boolean;
      readonly at: number;
    };

const pattern =
  /(\n(?:[ \t]*\n)*)|([ ]{3,}|[ ]*\t[ ]*)|([ ]+)|([0-9]+(?:[.,'][0-9]+)*)|([.,][0-9]+)|(\p{L}[\p{L}\p{M}]*(?:'\p{L}+)?)|(.)/gsu;

/** Words, numerals, signs and line ends, in order; every character but plain spaces is in one of them. */
export function scan(text: string): Prim[] {
  const prims: Prim[] = [];
  let glued = false;
  for (const match of text.matchAll(pattern)) {
    const raw = match[0];
    const at = match.index;
    if (match[3] !== undefined) {
      glued = false;
      continue;
    }
    if (match[1] !== undefined) {
      prims.push({ kind: 'line', text: raw.length > 1 ? 'blank' : 'line', raw, glued: false, at });
      glued = false;
      continue;
    }
    if (match[2] !== undefined) {
      prims.push({ kind: 'sign', text: '\t', raw, glued: false, at });
      glued = false;
      continue;
    }
    if (match[4] !== undefined || match[5] !== undefined) {
      // ".5" right behind a word or number is a full stop and a number
      const leading = match[5] !== undefined;
      if (leading && raw[0] === ',') {
        prims.push({ kind: 'sign', text: ',', raw: ',', glued, at });
        prims.push({ kind: 'number', text: raw.slice(1), raw: raw.slice(1), glued: true, at: at + 1 });
      } else prims.push({ kind: 'number', text: raw, raw, glued, at });
    } else if (match[6] !== undefined)
      prims.push({ kind: 'word', text: fold(raw).replaceAll("'", ''), raw, glued, at });
    else prims.push({ kind: 'sign', text: raw, raw, glued, at });
    glued = true;
  }
  return prims;
}
