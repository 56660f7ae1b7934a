/** The way back to where something was asked, for what is told later: the adapter's own words, which nobody else reads. */
import { objectIn, textIn } from './told.ts';

export interface Address {
  readonly room: string;
  readonly thread: string | null;
  readonly repliesTo: string | null;
}

export const addressOf = (address: Address): string => JSON.stringify(address);

/** null where these are no words of ours. */
export function readAddress(text: string): Address | null {
  try {
    const read = objectIn({ read: JSON.parse(text) }, 'read');
    const room = textIn(read, 'room');
    return room === null ? null : { room, thread: textIn(read, 'thread'), repliesTo: textIn(read, 'repliesTo') };
  } catch {
    return null;
  }
}
