/** What a scale showed while one fat after the other went in: "no tare: olive 500 g, with the coconut 750 g". */
import type { Assembly, Row } from './rows.ts';

const climbs =
  /\b(?:without|not|never|no|forgot|forgetting|didn['’]?t|haven['’]?t) (?:to )?(?:a )?(?:re-?)?(?:set(?:ting)? to zero|zero(?:ed|ing)?|tar(?:e|ed|ing))\b|\b(?:running|cumulative|rising|growing) (?:totals?|weights?|readings?|sums?)\b|\b(?:display|scales?|reading|readings|figure|number) (?:that )?(?:climb|rise|rose|grow|grew|went up|goes up|kept rising)\w*/i;
/** Fats that a climbing display tells from a list by chance, at the least. */
const leastFats = 2;

/** Asks what each weighs, where the weights only grow and the post says that the scale was not set to zero. */
export function climbing(assembly: Assembly, rows: readonly Row[]): void {
  const fats = rows.filter(({ named, grams }) => named.meaning.kind === 'fat' && grams !== null);
  const grows = fats.every(({ grams }, k) => k === 0 || (grams ?? 0) > (fats[k - 1]?.grams ?? 0));
  const [said] = fats.length >= leastFats && grows ? (climbs.exec(assembly.source.text) ?? []) : [];
  if (said !== undefined) assembly.doubts.push({ id: 'corrected', said, adding: true });
}
