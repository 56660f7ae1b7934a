/** What a commit does in a transaction. */
import type { Change } from './port.ts';
import { type Args, ask, type Steps } from './statement.ts';
import type { Statements } from './statements.ts';
import { checkText, longestKey, longestReminderId } from './texts.ts';

/** Thrown out of a transaction, so that nothing of it is written. */
export class Conflict extends Error {
  override readonly name = 'Conflict';
}

export function* apply(of: Statements, owner: string, changes: readonly Change[], now: number): Steps<void> {
  for (const change of changes) yield* applyOne(of, owner, change, now);
}

function* applyOne(of: Statements, owner: string, change: Change, now: number): Steps<void> {
  switch (change.do) {
    case 'put': {
      const { kind, data, expects, until = null } = change;
      const key = checkText(change.key, 'a key', longestKey);
      const args: Args = { owner, kind, key, data: JSON.stringify(data), until, now, expects };
      const one = expects === null ? of.put : expects === 0 ? of.putNew : of.replace;
      if ((yield* ask(one, args)).length === 0) throw new Conflict();
      return;
    }
    case 'remove': {
      const { kind, key } = change;
      yield* ask(of.remove, { owner, kind, key: checkText(key, 'a key', longestKey) });
      if (kind === 'batch') yield* ask(of.removeOfBatch, { owner, key });
      return;
    }
    case 'remind': {
      const { id, about, dueAt, platform, place, person, address, batch } = change.reminder;
      checkText(id, "a reminder's id", longestReminderId);
      for (const text of [platform, place, person, batch ?? '-']) checkText(text, 'a part of a reminder');
      yield* ask(of.remind, {
        owner,
        id,
        dueAt,
        now,
        platform,
        place,
        person,
        address: address === '' ? address : checkText(address, 'an address'),
        about: JSON.stringify(about),
        batch,
      });
      return;
    }
    case 'move':
      yield* ask(of.move, { owner, id: change.id, dueAt: change.dueAt });
      return;
    case 'cancel':
      yield* ask(of.cancel, { owner, id: change.id });
  }
}
