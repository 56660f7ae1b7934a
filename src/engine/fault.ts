/** What the engine refuses, as data: the core words it. Structurally a `Result` of `answer/types.ts`. */
export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: EngineFault };

export type EngineFaultKind =
  | 'no-fat'
  | 'no-alkali'
  | 'unknown-fat'
  | 'negative'
  | 'not-finite'
  | 'too-little'
  | 'too-much'
  | 'superfat-out-of-range'
  | 'purity-out-of-range'
  | 'concentration-out-of-range'
  | 'step-out-of-range'
  | 'split-out-of-range'
  | 'nothing-to-scale';

export interface EngineFault {
  readonly kind: EngineFaultKind;
  /** The figure that cannot be, as a stable word and where it helps the id it belongs to: `fat olive-oil-virgin`. */
  readonly figure: string;
  readonly value: number;
  /** What would have been accepted, where it is a range. */
  readonly range?: readonly [number, number];
}

export const done = <T>(value: T): Result<T> => ({ ok: true, value });

export const refuse = (
  kind: EngineFaultKind,
  figure: string,
  value: number,
  range?: readonly [number, number],
): { readonly ok: false; readonly fault: EngineFault } => ({
  ok: false,
  fault: range ? { kind, figure, value, range } : { kind, figure, value },
});
