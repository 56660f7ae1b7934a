/**
 * Learns what each sign of a text weighs: logistic regression on the most telling stretch of each text, by gradient
 * steps of falling size for each sign (J. Duchi, E. Hazan, Y. Singer, Adaptive subgradient methods, JMLR 12, 2011) and
 * the mean of the later rounds (B. T. Polyak, A. B. Juditsky, SIAM J. Control Optim. 30, 1992).
 */

export interface Lesson {
  /** What is to be heard is so. */
  readonly holds: boolean;
  /** How much the lesson counts beside others. */
  readonly counts: number;
  readonly stretches: readonly ReadonlySet<string>[];
}

export interface Learning {
  /** Orders in which the lessons are gone through anew: their mean depends less on chance. */
  readonly orders: number;
  readonly rounds: number;
  readonly firstStep: number;
  /** Signs of fewer lessons teach nothing. */
  readonly fewest: number;
  /** How strongly each step draws a weight back to nothing. */
  readonly shrink: number;
}

/** The weight of each sign in tenths of a logit, by these lessons. */
export function learn(lessons: readonly Lesson[], learning: Learning): ReadonlyMap<string, number> {
  const { numbered, signs } = numberedOf(lessons, learning.fewest);
  const mean = new Float64Array(signs.length);
  const random = randomFrom(12345);
  for (let order = 0; order < learning.orders; order++) addOrder(mean, numbered, learning, random);
  return new Map(signs.map((sign, i) => [sign, Math.round(10 * (mean[i] ?? 0))]));
}

/** Adds what is learned in one order to the mean of all. */
function addOrder(
  mean: Float64Array,
  lessons: readonly Numbered[],
  { orders, rounds, firstStep, shrink }: Learning,
  random: () => number,
): void {
  const weights = new Float64Array(mean.length);
  const squares = new Float64Array(mean.length).fill(1e-6);
  for (let round = 0; round < rounds; round++) {
    for (const { holds, counts, stretches } of shuffled(lessons, random)) {
      const { sum, stretch } = mostTelling(stretches, weights);
      const chance = 1 / (1 + Math.exp(-sum));
      const off = counts * (holds ? 1 - chance : -chance);
      for (const sign of stretch) {
        const step = off - shrink * (weights[sign] ?? 0);
        squares[sign] = (squares[sign] ?? 0) + step * step;
        weights[sign] = (weights[sign] ?? 0) + (firstStep * step) / Math.sqrt(squares[sign] ?? 1);
      }
    }
    if (round >= rounds / 2)
      for (const [sign, weight] of weights.entries()) mean[sign] = (mean[sign] ?? 0) + (2 * weight) / rounds / orders;
  }
}

/** A lesson with its signs by their numbers. */
type Numbered = Omit<Lesson, 'stretches'> & { readonly stretches: readonly (readonly number[])[] };

function numberedOf(
  lessons: readonly Lesson[],
  fewest: number,
): { readonly numbered: readonly Numbered[]; readonly signs: readonly string[] } {
  const counts = new Map<string, number>();
  for (const { stretches } of lessons)
    for (const sign of new Set(stretches.flatMap((stretch) => [...stretch])))
      counts.set(sign, (counts.get(sign) ?? 0) + 1);
  const signs = [...counts].filter(([, count]) => count >= fewest).map(([sign]) => sign);
  const numbers = new Map(signs.map((sign, i) => [sign, i]));
  const numbered = lessons.map(({ stretches, ...rest }) => ({
    ...rest,
    stretches: stretches.map((stretch) => [...stretch].flatMap((sign) => numbers.get(sign) ?? [])),
  }));
  return { numbered, signs };
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
