/** A factor that is told in words or figures: "half", "two thirds", "one and a half", "1.5", "60 %", "doubled". */

export const words: Readonly<Record<string, number>> = {
  double: 2,
  twice: 2,
  triple: 3,
  treble: 3,
  'three times': 3,
  quadruple: 4,
  halve: 0.5,
  half: 0.5,
};

const byVerb: Readonly<Record<string, number>> = {
  halved: 0.5,
  halving: 0.5,
  doubled: 2,
  doubling: 2,
  tripling: 3,
  tripled: 3,
  trebled: 3,
  quadrupled: 4,
  triple: 3,
  quartered: 0.25,
};
/** "Half", "two thirds", "60 %", "three times", "one and a half", "1.5 x". */
export function factorOf(said: string): number | undefined {
  const word = said.toLowerCase();
  const number = word.replace(/ ?(?:times|[x×])$/, '').trim();
  const factor = words[word] ?? byVerb[word] ?? sumOf(number);
  return factor > 0 && factor <= mostTimes ? factor : undefined;
}

const mostTimes = 100;

const parts: Readonly<Record<string, number>> = {
  half: 2,
  third: 3,
  quarter: 4,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  eighth: 8,
  tenth: 10,
};
const signs: Readonly<Record<string, number>> = { '½': 1 / 2, '⅓': 1 / 3, '⅔': 2 / 3, '¼': 1 / 4, '¾': 3 / 4 };
const cardinals = 'zero one two three four five six seven eight nine ten'.split(' ');

/** "One and a half", "two thirds", "1 1/2", "2/3", "60 %"; NaN for anything else. */
function sumOf(said: string): number {
  const share = /^([\d.,]+) ?(?:%|percent|per cent)$/.exec(said);
  if (share) return sumOf(share[1] ?? '') / 100;
  const [head = '', more] = said.split(' and ');
  if (more !== undefined) return sumOf(head) + sumOf(more);
  const [one = '', other] = head.split(' ');
  const part = parts[(other ?? one).replace(/s$/, '')];
  if (part !== undefined) return (other === undefined || one === 'a' ? 1 : sumOf(one)) / part;
  if (other !== undefined) return sumOf(one) + sumOf(other);
  const [above = '', below] = one.split('/');
  if (below !== undefined) return Number(above) / Number(below);
  const word = cardinals.indexOf(one);
  return signs[one] ?? (word > 0 ? word : Number(one.replace(',', '.')));
}
