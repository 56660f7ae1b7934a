/**
 * Water of the lye: concentration w = alkali / (alkali + water), ratio r = water / alkali, share of the fat weight.
 * Grams as weighed, shares by mass.
 */

/** w (0 < w ≤ 1) to r, and r (≥ 0) to w. */
export const ratioOf = (concentration: number): number => (1 - concentration) / concentration;
export const concentrationOf = (ratio: number): number => 1 / (1 + ratio);

/** How much water is wanted; every rule but `grams` follows the alkali as weighed or the fat. */
export type WaterRule =
  | { readonly kind: 'concentration'; readonly value: number }
  | { readonly kind: 'ratio'; readonly value: number }
  | { readonly kind: 'share-of-fat'; readonly value: number }
  | { readonly kind: 'grams'; readonly value: number };

/** A 33 % solution: the middle of the usual 25–40 % (common practice). */
export const USUAL_WATER: WaterRule = { kind: 'concentration', value: 0.33 };

/** Water (g) that a rule asks for. */
export function waterFor(rule: WaterRule, alkaliGrams: number, fatGrams: number): number {
  switch (rule.kind) {
    case 'concentration':
      return alkaliGrams * ratioOf(rule.value);
    case 'ratio':
      return alkaliGrams * rule.value;
    case 'share-of-fat':
      return fatGrams * rule.value;
    case 'grams':
      return rule.value;
  }
}

/** What each rule accepts. The ends of the first two are the working floor r = 1 and a lye too thin to be meant. */
export const WATER_RANGES: Readonly<Record<WaterRule['kind'], readonly [number, number]>> = {
  concentration: [0.01, 0.5],
  ratio: [1, 99],
  'share-of-fat': [0.01, 5],
  grams: [0, 1e9],
};

/**
 * Whether the alkali dissolves: `will-not-dissolve` above its solubility at 20 °C, `below-floor` above w = 0.5 (r < 1),
 * `strong` above 0.40, `weak` under 0.25, else `usual`.
 */
export type Dissolving = 'will-not-dissolve' | 'below-floor' | 'strong' | 'usual' | 'weak';

/**
 * Solubility at 20 °C as w. NaOH 52.2 % (Great Soviet Encyclopedia); KOH 112 g in 100 g water, 52.8 % (CRC Handbook,
 * from memory): near enough that the lower stands for both and for mixes. The band 25–40 % is common practice.
 */
export const WATER_LIMITS = { solubility: 0.522, floor: 0.5, strong: 0.4, weak: 0.25 } as const;

/** Keeps a concentration that a rule meets exactly on the milder side. */
const HAIR = 1e-9;

export function dissolvingOf(concentration: number): Dissolving {
  if (concentration > WATER_LIMITS.solubility + HAIR) return 'will-not-dissolve';
  if (concentration > WATER_LIMITS.floor + HAIR) return 'below-floor';
  if (concentration > WATER_LIMITS.strong + HAIR) return 'strong';
  return concentration < WATER_LIMITS.weak - HAIR ? 'weak' : 'usual';
}
