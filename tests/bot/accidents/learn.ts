/**
 * Learns what each sign of a text weighs for and against an accident: logistic regression on the most telling stretch
 * of each text, by gradient steps of falling size for each sign (J. Duchi, E. Hazan, Y. Singer, Adaptive subgradient
 * methods, JMLR 12, 2011) and the mean of the later rounds (B. T. Polyak, A. B. Juditsky, SIAM J. Control Optim. 30,
 * 1992). Run as a program it writes `src/bot/first-aid-weights.ts`.
 */
import { writeFileSync } from 'node:fs';
import { signsOf, stretchWithNext } from '../../../src/bot/first-aid-signs.ts';
import { accidentTexts, postTexts, type Told } from './texts.ts';

/** A missed accident costs as much as three texts that get first aid needlessly. */
const costOfMiss = 3;
const rounds = 12;
/** Signs of fewer texts teach nothing. */
const fewest = 3;
const firstStep = 0.3;

interface Lesson {
  readonly accident: boolean;
  /** Numbers of the signs of each stretch. */
  readonly stretches: readonly (readonly number[])[];
}

/** The weight of each sign, by these texts. */
export function learn(texts: readonly Told[]): ReadonlyMap<string, number> {
  const { lessons, signs } = lessonsOf(texts);
  const weights = new Float64Array(signs.length);
  const squares = new Float64Array(signs.length).fill(1e-6);
  const mean = new Float64Array(signs.length);
  const random = randomFrom(12345);
  for (let round = 0; round < rounds; round++) {
    for (const { accident, stretches } of shuffled(lessons, random)) {
      const { sum, stretch } = mostTelling(stretches, weights);
      const chance = 1 / (1 + Math.exp(-sum));
      const off = accident ? costOfMiss * (1 - chance) : -chance;
      for (const sign of stretch) {
        squares[sign] = (squares[sign] ?? 0) + off * off;
        weights[sign] = (weights[sign] ?? 0) + (firstStep * off) / Math.sqrt(squares[sign] ?? 1);
      }
    }
    if (round >= rounds / 2)
      for (const [sign, weight] of weights.entries()) mean[sign] = (mean[sign] ?? 0) + (2 * weight) / rounds;
  }
  return new Map(signs.map((sign, i) => [sign, Math.round(10 * (mean[i] ?? 0))]));
}

function lessonsOf(texts: readonly Told[]): { readonly lessons: Lesson[]; readonly signs: readonly string[] } {
  const told = texts.flatMap(({ text, accident }) => {
    const signs = signsOf(text);
    return signs ? [{ signs, accident }] : [];
  });
  const counts = new Map<string, number>();
  for (const { signs } of told)
    for (const sign of new Set([...signs.whole, ...signs.stretches.flatMap((stretch) => [...stretch])]))
      counts.set(sign, (counts.get(sign) ?? 0) + 1);
  const signs = [...counts].filter(([, count]) => count >= fewest).map(([sign]) => sign);
  const numbers = new Map(signs.map((sign, i) => [sign, i]));
  const numbered = (all: Iterable<string>): number[] => [...all].flatMap((sign) => numbers.get(sign) ?? []);
  const lessons = told.map(({ signs: own, accident }) => ({
    accident,
    stretches: own.stretches.map((_, at) => numbered(new Set([...own.whole, ...stretchWithNext(own, at)]))),
  }));
  return { lessons, signs };
}

function mostTelling(stretches: readonly (readonly number[])[], weights: Float64Array) {
  let [sum, stretch]: [number, readonly number[]] = [Number.NEGATIVE_INFINITY, []];
  for (const one of stretches) {
    let own = 0;
    for (const sign of one) own += weights[sign] ?? 0;
    if (own > sum) [sum, stretch] = [own, one];
  }
  return { sum, stretch };
}

/** Numbers from 0 to 1 that are the same each time (linear congruential, ISO C's example). */
const randomFrom = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
};

function shuffled<T>(all: readonly T[], random: () => number): readonly T[] {
  const own = [...all];
  for (let i = own.length - 1; i > 0; i--) {
    const other = Math.floor(random() * (i + 1));
    [own[i], own[other]] = [own[other] as T, own[i] as T];
  }
  return own;
}

if (import.meta.main) {
  const weights = learn([...accidentTexts, ...postTexts]);
  const lines = [...weights].filter(([, weight]) => weight !== 0).map(([sign, weight]) => `${sign}:${weight}`);
  const about =
    '/** What each sign weighs for an accident and against it, in tenths of a logit: learned, `npm run generate:first-aid`. */';
  writeFileSync(
    new URL('../../../src/bot/first-aid-weights.ts', import.meta.url),
    `${about}\nexport const weights = \`${lines.sort().join('\n')}\`;\n`,
  );
}
