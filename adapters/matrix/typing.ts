/** "… is typing" while work takes longer than a moment, and what was read, told to the room after it. */
import type { MatrixClient } from 'matrix-js-sdk';

/** Milliseconds of work before anybody is told of it: most answers are there sooner. */
const moment = 400;
/** Milliseconds after which a server takes the notice back by itself. */
const shown = 30_000;

export function createTyping({ client }: { readonly client: MatrixClient }) {
  const tell = (room: string, isTyping: boolean): void => {
    // A notice that does not arrive is no loss.
    client.sendTyping(room, isTyping, shown).catch(() => {});
  };
  return async <T>(room: string, work: () => Promise<T>): Promise<T> => {
    let isTold = false;
    const timer = setTimeout(() => {
      isTold = true;
      tell(room, true);
    }, moment);
    try {
      return await work();
    } finally {
      clearTimeout(timer);
      if (isTold) tell(room, false);
    }
  };
}

/** Milliseconds in which several answers in a room are one receipt. */
const gathered = 2000;

/** The read marker of rooms in which something was answered. */
export function createReceipts(client: MatrixClient) {
  const waiting = new Map<string, string>();
  let timer: NodeJS.Timeout | undefined;
  const flush = (): void => {
    timer = undefined;
    for (const [room, event] of waiting) client.setRoomReadMarkersHttpRequest(room, event, event).catch(() => {});
    waiting.clear();
  };
  return {
    read: (room: string, event: string): void => {
      waiting.set(room, event);
      timer ??= setTimeout(flush, gathered);
    },
    close: (): void => {
      clearTimeout(timer);
      flush();
    },
  };
}
