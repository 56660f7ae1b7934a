/**
 * The cheapest chains of groups up to each item of a row, a few of each, cheapest first: in rows of numbers, which are
 * used again for every post.
 */

/** Chains that are kept of each end, at the most. */
export const kept = 6;

/** On which side of their names the amounts of a chain's last rows stand. */
export const side = { none: 0, amountFirst: 1, nameFirst: 2 } as const;

export interface Chains {
  /** How many there are of each end. */
  readonly count: Uint8Array;
  readonly cost: Float64Array;
  /** The chain that each carries on; -1 at the start. */
  readonly back: Int32Array;
  /** Where its last group begins; -1 where its last item stands alone. */
  readonly begin: Int32Array;
  /** Whose the amounts of its last group are; -1 where they are every name's. */
  readonly thing: Int32Array;
  readonly side: Uint8Array;
}

const roomFor = (items: number): Chains => ({
  count: new Uint8Array(items + 1),
  cost: new Float64Array((items + 1) * kept),
  back: new Int32Array((items + 1) * kept),
  begin: new Int32Array((items + 1) * kept),
  thing: new Int32Array((items + 1) * kept),
  side: new Uint8Array((items + 1) * kept),
});

let room = roomFor(100);

/** Room for the chains of so many items, with the empty one at its start. */
export function chainsFor(items: number): Chains {
  if (room.count.length <= items) room = roomFor(2 * items);
  room.count[0] = 1;
  room.cost[0] = 0;
  room.back[0] = -1;
  room.begin[0] = -1;
  room.side[0] = side.none;
  return room;
}

export const countAt = ({ count }: Chains, end: number): number => count[end] ?? 0;
export const costOf = ({ cost }: Chains, chain: number): number => cost[chain] ?? 0;
export const backOf = ({ back }: Chains, chain: number): number => back[chain] ?? -1;
export const beginOf = ({ begin }: Chains, chain: number): number => begin[chain] ?? -1;
export const thingOf = ({ thing }: Chains, chain: number): number => thing[chain] ?? -1;
export const sideOf = (chains: Chains, chain: number): number => chains.side[chain] ?? side.none;
/** The last item of a chain, counted from one. */
export const endOf = (chain: number): number => Math.trunc(chain / kept);

/** Puts a chain in its place among those of its end; the dearest gives way where there is no room. */
export function insert(
  chains: Chains,
  end: number,
  cost: number,
  back: number,
  begin: number,
  thing: number,
  sideOf: number,
): void {
  const first = end * kept;
  const count = countAt(chains, end);
  if (count < kept) chains.count[end] = count + 1;
  let at = first + Math.min(count, kept - 1);
  for (; at > first && costOf(chains, at - 1) > cost; at--) {
    chains.cost[at] = costOf(chains, at - 1);
    chains.back[at] = backOf(chains, at - 1);
    chains.begin[at] = beginOf(chains, at - 1);
    chains.thing[at] = thingOf(chains, at - 1);
    chains.side[at] = chains.side[at - 1] ?? side.none;
  }
  chains.cost[at] = cost;
  chains.back[at] = back;
  chains.begin[at] = begin;
  chains.thing[at] = thing;
  chains.side[at] = sideOf;
}
