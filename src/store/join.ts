/** Two owners become one: all of the first goes over to the second, and nothing of either is lost. */
import type { Data } from './port.ts';
import { ask, type Steps } from './statement.ts';
import type { Statements } from './statements.ts';
import { withNumber } from './texts.ts';

/** What a person sees as the name, in the data, where a key had to change; and what stands before its number. */
const named: Readonly<Record<string, { readonly field: string; readonly before: string }>> = {
  recipe: { field: 'name', before: ' ' },
  batch: { field: 'lot', before: '-' },
};

export function* join(of: Statements, owner: string, into: string, ending: string): Steps<void> {
  const clashes = yield* ask(of.clashes, { owner, into });
  for (const { kind, key, data } of clashes) {
    const naming = named[kind];
    // Settings and what was just talked of: those of the owner that stays hold.
    if (!naming) yield* ask(of.remove, { owner, kind, key });
    else {
      let number = 2;
      let to = withNumber(key, number, naming.before);
      while ((yield* ask(of.hasKey, { owner, into, kind, key: to })).length > 0) {
        number += 1;
        to = withNumber(key, number, naming.before);
      }
      const renamed = rename(JSON.parse(data) as Data, naming, number);
      yield* ask(of.rename, { owner, kind, key, to, data: JSON.stringify(renamed) });
      if (kind === 'batch') yield* ask(of.renameBatch, { owner, key, to });
    }
  }
  yield* ask(of.renameReminders, { owner, into, ending });
  for (const one of [of.joinDocuments, of.joinReminders, of.joinAccounts, of.joinJoined]) {
    yield* ask(one, { owner, into });
  }
  yield* ask(of.removeOwner, { owner });
  yield* ask(of.addJoined, { owner, into });
}

function rename(data: Data, { field, before }: { field: string; before: string }, number: number): Data {
  const name = data[field];
  return typeof name === 'string' ? { ...data, [field]: withNumber(name, number, before) } : data;
}
