/** The file of the embedded store: earlier and later forms, copies, damage, and who may write. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, describe, expect, it } from 'vitest';
import { keeper, openStore } from '../../src/index.ts';
import { sqliteBuilder } from '../../src/store/dialect.ts';
import { migrationsFrom, newest } from '../../src/store/migrations.ts';
import type { Store } from '../../src/store/port.ts';
import { openWriter } from '../../src/store/sqlite/file.ts';
import { dataOf, earlierForms, expectEarlierData, schemaOf } from './earlier.ts';

const root = mkdtempSync(join(tmpdir(), 'lyeward-'));
afterAll(() => rmSync(root, { recursive: true }));
let folders = 0;
const newFolder = (): string => {
  folders += 1;
  return join(root, `data ${folders}`);
};
const open = (folder: string, more: { readOnly?: boolean; who?: string } = {}): Promise<Store> =>
  openStore({ folder, who: 'a test', database: null, ...more });
const place = (folder: string) => ({ folder, who: 'a test', database: null });
const me = { platform: 'console', person: 'me' };
const you = { platform: 'console', person: 'you' };

const save = (store: Store, key: string, text: string, account = me) =>
  store.of(account).commit([{ do: 'put', kind: 'recipe', key, data: { text }, expects: null }]);
const texts = async (store: Store, account = me) =>
  (await store.of(account).list('recipe', { limit: 100 })).map(({ data }) => data['text']);

async function kept(folder: string, ...recipes: readonly string[]): Promise<void> {
  const store = await open(folder);
  for (const text of recipes) await save(store, text.slice(0, 50), text);
  await store.close();
}

/** The bytes of everything in a folder. */
const contentOf = (folder: string): string =>
  readdirSync(folder)
    .map((name) => readFileSync(join(folder, name), 'latin1'))
    .join('');

describe('forms of the file', () => {
  it('are kept, each that was ever released', () => {
    expect(earlierForms).toEqual(Array.from({ length: newest - 1 }, (_, i) => i + 1));
  });

  it.each(earlierForms)('form %i is made as it was, and read after the steps to the newest', async (form) => {
    const made = migrationsFrom(0, sqliteBuilder(), form)
      .map((text) => `${text.trim()};\n`)
      .join('');
    expect(made).toBe(schemaOf(form, 'sqlite'));

    const folder = newFolder();
    mkdirSync(folder);
    const database = new DatabaseSync(join(folder, 'lyeward.db'));
    database.exec(`${made}${dataOf(form)} pragma application_id = ${0x6c796577}; pragma user_version = ${form}`);
    database.close();
    await (await keeper()).backup(place(folder), join(root, `form ${form}`));
    const store = await openStore({ ...place(folder), now: () => 1_795_650_000_000 });
    await expectEarlierData(store);
    await store.close();

    const schema = (path: string) => {
      const one = new DatabaseSync(path);
      const all = one.prepare('select type, name, tbl_name, sql from sqlite_schema order by name').all();
      one.close();
      return all;
    };
    const fresh = newFolder();
    await kept(fresh);
    expect(schema(join(folder, 'lyeward.db'))).toEqual(schema(join(fresh, 'lyeward.db')));

    // A copy of that form comes back as well.
    const again = newFolder();
    await (await keeper()).restore(place(again), join(root, `form ${form}`));
    const restored = await openStore({ ...place(again), now: () => 1_795_650_000_000 });
    await expectEarlierData(restored);
    await restored.close();
  });

  it('a later form is refused, untouched', async () => {
    const folder = newFolder();
    await kept(folder, 'soap');
    const path = join(folder, 'lyeward.db');
    const database = new DatabaseSync(path);
    database.exec(`pragma user_version = ${newest + 1}`);
    database.close();
    const [before, names] = [readFileSync(path), readdirSync(folder)];
    await expect(open(folder)).rejects.toMatchObject({ name: 'StoreTrouble', code: 'newer' });
    await expect(open(folder, { readOnly: true })).rejects.toMatchObject({ code: 'newer' });
    const { backup, restore, checkData } = await keeper();
    await expect(backup(place(folder), join(root, 'copy of a newer one'))).rejects.toMatchObject({ code: 'newer' });
    await expect(restore(place(newFolder()), path)).rejects.toMatchObject({ code: 'newer' });
    await expect(checkData(place(folder))).rejects.toMatchObject({ code: 'newer' });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(readdirSync(folder)).toEqual(names);
  });
});

describe('durable and private', () => {
  it('is set to survive a power cut, and to overwrite what is deleted', () => {
    const folder = newFolder();
    mkdirSync(folder);
    const database = openWriter(join(folder, 'lyeward.db'));
    const setting = (name: string) => Object.values(database.prepare(`pragma ${name}`).get() ?? {})[0];
    // 2: FULL, https://sqlite.org/pragma.html#pragma_synchronous
    expect(['journal_mode', 'synchronous', 'secure_delete', 'foreign_keys'].map(setting)).toEqual(['wal', 2, 1, 1]);
    database.close();
  });

  it('is read by its own account alone', async () => {
    const folder = newFolder();
    await kept(folder, 'soap');
    const open = readdirSync(folder).filter((name) => (statSync(join(folder, name)).mode & 0o077) !== 0);
    // The lock is empty.
    expect([statSync(folder).mode & 0o077, open]).toEqual([0, ['lyeward.lock']]);
  });

  it('leaves nothing of what was erased, in no file, while it runs on', async () => {
    const folder = newFolder();
    const store = await open(folder);
    const secret = 'lavender-and-a-name';
    await save(store, secret, `${secret} `.repeat(500));
    await save(store, secret, `changed ${secret}`);
    await save(store, 'other', 'stays', you);
    await store.values('x').set('k', 'v');
    expect(contentOf(folder)).toContain(secret);
    await store.of(me).erase();
    expect(contentOf(folder)).not.toContain(secret);
    expect(await texts(store, you)).toEqual(['stays']);
    await store.close();
  });
});

describe('copies of the file', () => {
  it('are made beside the writer, and come back whole', async () => {
    const folder = newFolder();
    const copy = join(root, 'a copy');
    const store = await open(folder);
    await save(store, 'a', 'before');
    const { backup, restore, checkData } = await keeper();
    await backup(place(folder), copy);
    await save(store, 'b', 'after');
    expect((await checkData(place(folder))).lines.join('\n')).toMatch(/whole.*1 account .*2 recipes/s);
    await expect(restore(place(folder), copy)).rejects.toMatchObject({ code: 'held' });
    await expect(backup(place(folder), copy)).rejects.toMatchObject({ message: expect.stringContaining('already') });
    await store.close();

    const { aside } = await restore(place(folder), copy);
    const back = await open(folder);
    expect(await texts(back)).toEqual(['before']);
    await back.close();

    // What was put aside is a copy like any other.
    await restore(place(folder), aside ?? '');
    const again = await open(folder);
    expect(await texts(again)).toEqual(['before', 'after']);
    await again.close();
  });

  it('do not bring back who was erased since', async () => {
    const folder = newFolder();
    const copy = join(root, 'an older copy');
    const { backup, restore } = await keeper();
    const store = await open(folder);
    await save(store, 'a', 'mine');
    await save(store, 'b', 'yours', you);
    const third = { platform: 'matrix', person: 'me' };
    await save(store, 'c', 'mine too', third);
    await backup(place(folder), copy);
    // What was owned apart when the copy was made, and was one when it was erased, goes whole.
    await store.link(third, await store.of(me).newLinkCode(Date.now()), Date.now());
    await store.of(me).erase();
    await save(store, 'new', 'come back by myself');
    await store.close();

    for (const loses of [[], ['lyeward.db'], ['lyeward.erased']]) {
      for (const name of loses) rmSync(join(folder, name));
      expect(await restore(place(folder), copy)).toMatchObject({ erased: 2 });
      const back = await open(folder);
      expect([await texts(back), await texts(back, third), await texts(back, you)]).toEqual([[], [], ['yours']]);
      await back.close();
    }

    // Also where somebody lays the copy into the folder by hand.
    writeFileSync(join(folder, 'lyeward.db'), readFileSync(copy));
    const byHand = await open(folder);
    expect([await texts(byHand), await texts(byHand, you)]).toEqual([[], ['yours']]);
    await byHand.close();
  });

  it('are refused where they are damaged, and nothing changes', async () => {
    const folder = newFolder();
    await kept(folder, 'here');
    const { restore, backup } = await keeper();
    const good = join(root, 'good');
    await backup(place(folder), good);
    const bad = join(root, 'bad');
    const bytes = readFileSync(good);
    for (const [what, content] of Object.entries({
      cut: bytes.subarray(0, bytes.length / 2),
      scribbled: Buffer.concat([bytes.subarray(0, 4096), Buffer.alloc(8192, 7), bytes.subarray(12_288)]),
      text: Buffer.from('500 g lard, 66 g NaOH\n'.repeat(300)),
    })) {
      writeFileSync(bad, content);
      await expect(restore(place(folder), bad), what).rejects.toMatchObject({ code: 'corrupt' });
    }
    const another = new DatabaseSync(join(root, 'another program'));
    another.exec('create table soap (id); pragma user_version = 1');
    another.close();
    await expect(restore(place(folder), join(root, 'another program'))).rejects.toMatchObject({ code: 'corrupt' });
    await expect(restore(place(folder), join(root, 'nowhere'))).rejects.toMatchObject({ code: 'unreachable' });
    const store = await open(folder);
    expect(await texts(store)).toEqual(['here']);
    await store.close();
    expect(existsSync(join(folder, 'lyeward.db.next'))).toBe(false);
  });
});

describe('trouble with the file', () => {
  it('one process writes, and others are told who', async () => {
    const folder = newFolder();
    const store = await open(folder, { who: 'the console' });
    await save(store, 'a', 'soap');
    await expect(open(folder)).rejects.toMatchObject({
      name: 'StoreTrouble',
      code: 'held',
      message: expect.stringMatching(new RegExp(`in use by the console, process ${process.pid} on`)),
    });
    const reader = await open(folder, { readOnly: true });
    expect(await texts(reader)).toEqual(['soap']);
    await expect(save(reader, 'b', 'no')).rejects.toMatchObject({ code: 'read-only' });
    await save(store, 'b', 'later');
    expect(await texts(reader)).toEqual(['soap', 'later']);
    await reader.close();
    await store.close();
    await kept(folder, 'free again');
  });

  it('nobody is taken for the holder who only has its number', async () => {
    const folder = newFolder();
    await kept(folder, 'a');
    writeFileSync(join(folder, 'lyeward.holder'), `the console, process ${process.pid} on here\n`);
    await kept(folder, 'b');
    expect(existsSync(join(folder, 'lyeward.holder'))).toBe(false);
  });

  it('a folder without a file reads as empty, and is left alone', async () => {
    const folder = newFolder();
    const store = await open(folder, { readOnly: true });
    expect(await texts(store)).toEqual([]);
    await store.close();
    expect(existsSync(folder)).toBe(false);
  });

  it('a damaged file is refused with a way out', async () => {
    const folder = newFolder();
    await kept(folder, 'soap '.repeat(5000));
    const path = join(folder, 'lyeward.db');
    const bytes = readFileSync(path);
    writeFileSync(path, bytes.fill(7, 0, 60));
    await expect(open(folder)).rejects.toMatchObject({ code: 'corrupt', hint: expect.stringContaining('restore') });
    expect(readFileSync(path).equals(bytes)).toBe(true);
    writeFileSync(path, 'no database at all');
    await expect(open(folder)).rejects.toMatchObject({ code: 'corrupt' });
    // It may be restored over.
    const copy = join(root, 'copy of a good one');
    const good = newFolder();
    await kept(good, 'good');
    const { backup, restore, checkData } = await keeper();
    await backup(place(good), copy);
    await restore(place(folder), copy);
    expect((await checkData(place(folder))).ok).toBe(true);
  });

  it('a file that was cut off is seen to be damaged', async () => {
    const folder = newFolder();
    await kept(folder, ...Array.from({ length: 50 }, (_, i) => `soap ${i} `.repeat(300)));
    const path = join(folder, 'lyeward.db');
    truncateSync(path, Math.floor(statSync(path).size / 8192) * 4096);
    const { checkData } = await keeper();
    const seen = await checkData(place(folder)).then(
      ({ ok }) => ok,
      ({ code }) => code,
    );
    expect([false, 'corrupt']).toContain(seen);
  });

  it('10,000 due at once are all handed out, once each, in bounded bites', async () => {
    const folder = newFolder();
    const store = await open(folder);
    const reminder = { platform: 'x', place: 'y', person: 'z', address: '', about: {}, batch: null };
    const changes = Array.from({ length: 10_000 }, (_, i) => ({
      do: 'remind' as const,
      reminder: { ...reminder, id: String(i), dueAt: 1000 + (i % 7) },
    }));
    await store.of(me).commit(changes);
    const seen: string[] = [];
    let bites = 0;
    for (;;) {
      const some = await store.bells.claim({ platforms: ['x'], now: 2000, leaseUntil: 9000, limit: 5000 });
      if (some.length === 0) break;
      expect(some.length).toBeLessThanOrEqual(1000);
      bites += 1;
      seen.push(...some.map(({ id }) => id));
    }
    expect([seen.length, new Set(seen).size, bites]).toEqual([10_000, 10_000, 10]);
    await store.close();
  });
});

/** Runs `work` on a store in a process of its own, behind some words of a shell. Prints what it says. */
function elsewhere(folder: string, shell: string, work: string): string {
  const program = `
    import { openStore } from ${JSON.stringify(join(import.meta.dirname, '../../src/index.ts'))};
    const open = () => openStore({ folder: ${JSON.stringify(folder)}, who: 'another', database: null });
    const save = (store, key, text) => store.of({ platform: 'console', person: 'me' })
      .commit([{ do: 'put', kind: 'recipe', key, data: { text }, expects: null }]);
    ${work}`;
  const file = join(root, `elsewhere ${folders}.ts`);
  writeFileSync(file, program);
  const { stdout, stderr } = spawnSync('sh', ['-c', `${shell} exec "$0" "$1"`, process.execPath, file], {
    encoding: 'utf8',
  });
  return stdout || stderr;
}

describe('trouble with the disk', () => {
  it('a full disk refuses what no longer fits, and keeps the rest', async () => {
    const folder = newFolder();
    await kept(folder);
    // Files may grow no further than to 600 blocks of 512 bytes; writes beyond fail, as on a disk without room.
    const said = elsewhere(
      folder,
      "trap '' XFSZ; ulimit -f 600;",
      `const store = await open();
       let kept = 0;
       try { for (;;) { await save(store, 'r' + kept, 'soap '.repeat(2000)); kept += 1; } }
       catch (error) { console.log(JSON.stringify([kept, error.name, error.code])); }
       let small = 0;
       try { await save(store, 'small', 'x'); small = 1; } catch (error) { small = error.code; }
       console.log(small);
       process.exit();`,
    );
    const [kept_, name, code] = JSON.parse(said.split('\n')[0] ?? '') as [number, string, string];
    expect([name, code]).toEqual(['StoreTrouble', 'full']);
    expect(kept_).toBeGreaterThan(3);
    const store = await open(folder);
    const found = await store.of(me).list('recipe', { prefix: 'r', limit: 1000 });
    expect(found).toHaveLength(kept_);
    await store.close();
    expect((await (await keeper()).checkData(place(folder))).ok).toBe(true);
  });

  it('a folder that may not be written is refused, and read all the same', async () => {
    const folder = newFolder();
    await kept(folder, 'soap');
    const said = elsewhere(
      folder,
      `chmod 755 '${root}' '${folder}'; chmod 444 '${folder}'/*; chmod 555 '${folder}';`,
      `process.setegid?.(65534); process.seteuid?.(process.geteuid() === 0 ? 65534 : process.geteuid());
       await open().catch((error) => console.log(JSON.stringify([error.name, error.code])));`,
    );
    expect(JSON.parse(said)).toEqual(['StoreTrouble', 'read-only']);
    await expect(open(join(folder, 'lyeward.db', 'x'))).rejects.toMatchObject({ code: 'read-only' });
  });
});
