/** What a question about fats meeting lye says: how warm each is, and what the mix shall be. */
import { be, type Claims, t } from './claims.ts';

export interface MixReading {
  /** °C by the number of the fat in the line, for those that have a temperature of their own. */
  readonly fatC: ReadonlyMap<number, number>;
  /** Of all other fats. */
  readonly fatsC: number | null;
  readonly solutionC: number | null;
  readonly wantedC: number | null;
}

const wanted = [
  ` (?:mix|mixture|blend|batter|combined|together|emulsion|trace|end up|ends up|final|result|soaping|soap) (?:(?:temp|temperature|to|is|be|at|of|comes|ends|up|shall|should|lands|around|about|out) )+${t} `,
  ` (?:want|need|like|aim\\w*|shoot\\w*|target|get|goal) (?:(?:for|to|it|the|a|an|mix|blend|batter|at|is|be|of|mixture|end|up|soap|everything|all|:|=|about|around) )*${t} `,
  ` to (?:get|reach|make|have|end up at|land at) (?:(?:a|the|mix|blend|batter|of|at|it|to) )*${t} `,
];

const both = [
  ` (?:both|everything|all|each|two) (?:[a-z]+ ){0,4}?${be}${t} `,
  ` (?:both|everything|all|each) (?:[^.?!\\n]*? )?(?:are|is|at) ${be}(?:room )?${be}${t} `,
  ` room temp\\w* ${be}${t} `,
];

type Side = 'fats' | 'lye';

/** What says that a bare figure is a temperature. */
const warmed = / (?:at|is|are|was|to|=|:|@) $/;
const beside = / (?:oils?|fats?|butters?|lye|A\d+|L\d+|solution) $/;

/** The nearest word of a side before or after a figure. */
const sides =
  / (?:(?<fats>F\d+|oils?|fats?|butters?|fat phase|oil phase)|(?<lye>[AWLI]\d+|lye|solution|caustic|alkali)) /;
const sideOf = (match: RegExpExecArray): Side => (match.groups?.['fats'] ? 'fats' : 'lye');

export function mixOf(claims: Claims): MixReading {
  const wantedC = claims.temperature(...wanted);
  // "Both" of several temperatures is that of some fats.
  const lone = (claims.text.match(/ T\d+(?= )/g)?.length ?? 0) <= 1;
  const same = lone && / (?:both|everything|room temp\w*|all) /.test(claims.text) ? claims.temperature(...both) : null;
  if (same !== null) return { fatC: new Map(), fatsC: same, solutionC: same, wantedC };
  const fatC = new Map<number, number>();
  let fatsC: number | null = null;
  let solutionC: number | null = null;
  let since = 0;
  // Where the amounts have units, "oils 45, lye 30" are temperatures.
  const weighed = (claims.text.match(/ G\d+(?= )/g)?.length ?? 0) > 1;
  for (const match of claims.text.matchAll(/ (?<t>[TN]\d+)(?= )/g)) {
    const name = match.groups?.['t'] ?? '';
    const figure = claims.line.figures.get(Number(name.slice(1)));
    const before = claims.text.slice(since, match.index + 1);
    if (!figure || (figure.letter === 'N' && !(warmed.test(before) || (weighed && beside.test(before))))) continue;
    const after = claims.text.slice(match.index + match[0].length);
    // "40 °C fats, 35 °C lye": what follows at once counts where the clause has named no side yet.
    const clause = before.slice(Math.max(before.lastIndexOf(' , '), before.lastIndexOf(' and ')) + 1);
    const side = (sideBefore(clause) ? null : sideAfter(after)) ?? sideBefore(before) ?? sideAfter(after);
    if (!side) continue;
    const celsius = claims.warmth(name);
    if (celsius === null) continue;
    if (side === 'lye') solutionC ??= celsius;
    else {
      const own = [...before.matchAll(/ F(\d+)(?= )/g)].map(([, id]) => Number(id));
      for (const id of own) fatC.set(id, celsius);
      fatsC ??= celsius;
    }
    since = match.index;
  }
  return { fatC, fatsC, solutionC, wantedC };
}

/** "olive oil at 50": the last word of a side before the figure, unless the figure itself describes what follows. */
function sideBefore(text: string): Side | null {
  let found: Side | null = null;
  for (let rest = text; ; ) {
    const match = sides.exec(rest);
    if (!match) return found;
    found = sideOf(match);
    rest = rest.slice(match.index + match[0].length - 1);
  }
}

/** "50 °C oils": what follows at once. */
function sideAfter(text: string): Side | null {
  const match = new RegExp(`^(?: (?:c|f|degrees?|deg|hot|warm|melted|cool|for|the|of|my))*${sides.source}`).exec(text);
  return match ? sideOf(match) : null;
}
