/**
 * Water or lye of another size than the rest: "doubled the lot, except the water, which I left at 300 g", "but for water I
 * took only 330 g altogether". It is as it is told, whatever the rest is taken times.
 */
export type Kept = 'alkali' | 'water';
export interface Anew {
  readonly kind: Kept;
  readonly grams: number;
  /** The words that say it. */
  readonly said: string;
}

const things: Readonly<Record<Kept, string>> = {
  alkali: '(?:lye|naoh|koh|caustic(?: soda| potash)?|sodium hydroxide|potassium hydroxide)',
  water: 'water',
};
const units: readonly (readonly [RegExp, number])[] = [
  [/^kg$/i, 1000],
  [/^(?:g|grams?)$/i, 1],
  [/^(?:oz|ounces?)$/i, 28.349523125],
];
export const weight =
  '(?:(?:at|to|with|only|just|about|exactly|down|the|same) )*(?<value>\\d+(?:[.,]\\d+)?) ?(?<unit>kg|g|oz|grams?|ounces?)\\b(?: (?:altogether|in total|in all|all told|for the (?:lot|whole (?:thing|lot|batch))))?';
export const deed =
  '(?:(?:i|we|it|have|has|had|was|is|just|only|simply) )*(?:left|leave|kept|keep|held|took|take|used|use|put|stayed|stays|went with|reduced|cut|weighed|made)(?: (?:it|that|in))*';
const but = '(?:except|but not|apart from|other than|save|bar|but|only|just not|without)';

const waysOf = (what: string): readonly RegExp[] =>
  [
    `,? ?\\b${but}(?: for| with)? (?:the |my )?${what},?(?: (?:which|that|where))? ${deed} ${weight}`,
    `,? ?\\b(?:${but} )?(?:for|with|of) (?:the |my )?${what},? ${deed} ${weight}`,
    `,? ?\\b(?:(?:${but}|and|while|though) )?(?:the |my )${what} ${deed} ${weight}`,
    `,? ?\\b(?:${but}|though|yet) (?:i |we )?${deed} ${weight} (?:of )?${what}\\b(?: altogether| in total| in all)?`,
  ].map((way) => new RegExp(way, 'i'));
let ways: Readonly<Record<Kept, readonly RegExp[]>> | null = null;

/** Without one of these nothing is told so. */
const cues = /\b(?:left|leave|kept|keep|held|took|take|used?|put|stay(?:ed|s)|went with|reduced|cut|weighed|made)\b/i;

/** What the words behind a recipe tell so; of the lye and the water each once. */
export function toldAnew(behind: string): readonly Anew[] {
  if (!cues.test(behind)) return [];
  ways ??= { alkali: waysOf(things.alkali), water: waysOf(things.water) };
  const all: Anew[] = [];
  for (const kind of ['water', 'alkali'] as const) {
    const found = ways[kind].map((way) => way.exec(behind)).find((match) => match !== null);
    const grams = found ? weightOf(found) : null;
    if (found && grams !== null) all.push({ kind, grams, said: found[0] });
  }
  return all;
}

/** The weight that was found; null where its unit is none. */
export function weightOf({ groups: { value = '', unit = '' } = {} }: RegExpExecArray): number | null {
  const factor = units.find(([sign]) => sign.test(unit))?.[1];
  return factor === undefined ? null : Number(value.replace(',', '.')) * factor;
}
