/** The way back to where something was asked, for what is told later: the adapter's own words, which nobody else reads. */
export interface Address {
  readonly room: string;
  readonly thread: string | null;
  readonly repliesTo: string | null;
}

export const addressOf = (address: Address): string => JSON.stringify(address);
