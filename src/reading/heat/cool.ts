/** What a question about cooling says: readings or a temperature now, a target, the room, what is in the pot. */
import { be, type Claims, roomOf, t } from './claims.ts';
import { type Reading, readingsOf } from './readings.ts';

export interface CoolReading {
  readonly readings: readonly Reading[];
  readonly stepK: number;
  readonly dayMinute: number | null;
  readonly halfDays: boolean;
  readonly nowC: number | null;
  readonly targetC: number | null;
  readonly roomC: number | null;
  /** Weight of what cools, g. */
  readonly grams: number | null;
  readonly of: 'soap' | 'lye' | 'fats' | null;
  /** "Can I add it at 75 °C?": yes or no first. */
  readonly asksWhether: boolean;
}

const whether =
  /^ (?:can|could|may|is|should|shall|ok|okay|do|does|will) (?!.* (?:how long|when) )| (?:ok|okay|fine|alright) \? $/;

const target = [
  ` (?:target|goal|aim|aiming for|shooting for|looking for|waiting for|wait for) ${be}(?:for )?${t} `,
  ` (?:to|below|under|beneath|reach|reaches|hit|hits|until|till|til|before) (?:(?:about|around|roughly|at|be|is|it|its|the|a|say|down|hits|reaches|gets|to|below|under|has|cooled|are) )*${t} `,
  ` ${t} when `,
  ` (?:cool\\w*|down|drop\\w*|fall\\w*|get\\w*|go\\w*|come\\w*|sink\\w*|reach\\w*|hit\\w*|until|till|til|before|long|time|under|below|beneath|to) (?:down |under |below |beneath |to |at |is |its |it |for |be |has |reaches |hits |gets |cools |drops |falls |comes |goes |i |can |the |pot |soap |lye |batch |mix |batter |oils |mass )*${be}${t} `,
  ` when (?:[a-z]+ ){0,8}?${t} `,
  ` when [^.?!\\n]*? (?:be|become|hit|hits|reach|reaches) (?:at |down |to )*${t} `,
  ` when (?:is|are|will|does|can) [^.?!,;\\n]*? (?:at|to|below|under) ${t} `,
  ` (?:how long|until|till|til) [^.?!,;\\n]*? (?:is|are|be|its) (?:at |to |down to )?${t} `,
  ` (?:want|need|like) (?:it |them |the |to |be |at |pot |soap |lye |mix |batter |oils |a |temperature |of )*${t} `,
];

export function coolOf(claims: Claims): CoolReading {
  const roomC = roomOf(claims);
  const { readings, stepK, dayMinute, halfDays } = readingsOf(claims);
  // "from 88 to 60": what it comes from is no target.
  const from = claims.temperature(` from ${be}${t} `);
  const targetC = claims.temperature(...target);
  const nowC = from ?? claims.temperature(` ${t} `);
  const { text } = claims;
  const grams = claims.take(
    ' (?<t>G\\d+) (?:of )?(?:the |my |raw |hot |cooked |soap |cp |hp |fresh )*(?:soap|batch|batter|paste|mass|mix|load|loaf|lye|L\\d+|A\\d+|oils?|fats?|F\\d+) ',
    ' (?:soap|batch|batter|paste|mass|L\\d+|oils?|fats?|pot|cooker) (?:(?:of|is|weighs|weighing|about|around|:|=|,|\\(|total|with) )*(?<t>G\\d+) ',
    ' (?<t>G\\d+) ',
  );
  return {
    readings: readings.length > 1 ? readings : [],
    stepK,
    dayMinute,
    halfDays,
    asksWhether: whether.test(text),
    nowC: readings.length === 1 ? (readings[0]?.temperatureC ?? null) : nowC,
    targetC,
    roomC,
    grams: grams?.value ?? null,
    of: ofWhat(text),
  };
}

function ofWhat(text: string): CoolReading['of'] {
  if (/ (?:soap|batter|batch|paste|mass|pot of soap|hp|mould|mold|loaf|trace|cook|cooked) /.test(text)) return 'soap';
  if (/ [AL]\d+ /.test(text)) return 'lye';
  return / (?:oils?|fats?|butters?|F\d+) /.test(text) ? 'fats' : null;
}
