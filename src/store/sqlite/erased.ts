/**
 * Who was erased stays erased, also where somebody brings back an older file. The made-up ids of erased owners stand
 * in the data file and in a list beside it, which outlives the file; whatever the two know apart they tell each other.
 */
import { closeSync, existsSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';

/** How many owners an older file had brought back. */
export function keepErased(database: DatabaseSync, folder: string): number {
  const path = join(folder, 'lyeward.erased');
  const beside = new Set(
    existsSync(path)
      ? readFileSync(path, 'utf8')
          .split('\n')
          .filter((id) => /^[\w-]{16}$/.test(id))
      : [],
  );
  const inside = new Set(
    database
      .prepare('select owner from erased')
      .all()
      .map(({ owner }) => String(owner)),
  );
  const back = beside.difference(inside);
  let erased = 0;
  if (back.size > 0) {
    const remove = database.prepare('delete from owner where id = ?');
    const note = database.prepare('insert into erased (owner, at) values (?, ?)');
    database.exec('begin immediate');
    for (const id of back) {
      erased += Number(remove.run(id).changes);
      note.run(id, Date.now());
    }
    database.exec('commit');
  }
  const unknown = inside.difference(beside);
  if (unknown.size > 0) append(path, [...unknown].map((id) => `${id}\n`).join(''));
  return erased;
}

function append(path: string, text: string): void {
  const file = openSync(path, 'a', 0o600);
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
