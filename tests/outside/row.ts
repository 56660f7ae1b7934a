/** One comparison with something outside the project. Every number is reckoned or read, none typed as a result. */
export interface Row {
  readonly check: string;
  readonly source: string;
  readonly unit: string;
  /** What the source says: a figure, or a range that ours has to fall into. */
  readonly expected: number | readonly [number, number];
  readonly ours: number;
  /** Greatest deviation allowed, in the unit. */
  readonly tolerance: number;
  /** Why ours lies outside none the less. A row that is explained and agrees is a fault too: the reason is stale. */
  readonly explained?: string;
}

export interface Group {
  readonly title: string;
  /** What is compared, and how independent the source is. */
  readonly about: string;
  readonly rows: readonly Row[];
}

/** Ours − expected; for a range the distance to its nearer end, 0 inside. */
export function deviation({ expected, ours }: Row): number {
  if (typeof expected === 'number') return ours - expected;
  const [low, high] = expected;
  if (ours < low) return ours - low;
  return ours > high ? ours - high : 0;
}

export const agrees = (row: Row): boolean => Math.abs(deviation(row)) <= row.tolerance;
/** Agrees, or differs for a reason that is given. */
export const holds = (row: Row): boolean => agrees(row) !== (row.explained !== undefined);
