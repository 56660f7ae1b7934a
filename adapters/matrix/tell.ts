/** What is told later: to its asker alone, in the thread where it was asked for, in the room that followed it. */
import type { Teller } from '../../src/index.ts';
import { readAddress } from './address.ts';
import type { House } from './house.ts';
import { letterOf, placed } from './message.ts';
import type { Rooms } from './rooms.ts';

/** Rejects where the bot is no longer in the room, or the address is none of its own. */
export function createTeller({ client, sender, media }: House, rooms: Rooms): Teller {
  return async ({ address, person, answer, id: key }) => {
    const to = readAddress(address);
    if (!to) throw new Error('no address of this adapter');
    const id = rooms.current(to.room);
    const room = client.getRoom(id);
    if (room?.getMyMembership() !== 'join') throw new Error('no longer in the room');
    const name = room.getMember(person)?.rawDisplayName ?? person;
    const { parts, enclosed } = letterOf(answer, { calls: { id: person, name } });
    // In a room that followed there is neither the thread nor the question.
    const where = id === to.room ? to : { thread: null, repliesTo: null };
    for (const [i, part] of parts.entries()) await sender.send(id, placed(part, where), `${key}/${i}`);
    let count = 0;
    for await (const content of media.contents(enclosed, await sender.isEncrypted(id))) {
      await sender.send(id, placed(content, where), `${key}/file ${count}`);
      count += 1;
    }
  };
}
