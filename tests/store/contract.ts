/** What every store holds to: the model, SQLite, PostgreSQL. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Account, Change, Data, NewReminder, Store } from '../../src/store/port.ts';

export interface Subject {
  readonly store: Store;
  readonly end: () => Promise<void>;
}

const minute = 60_000;

export function storeContract(name: string, start: (now: () => number) => Promise<Subject>): void {
  describe(`the contract of a store: ${name}`, () => {
    let time = Date.UTC(2026, 10, 26, 12);
    let subject: Subject;
    let people = 0;

    beforeAll(async () => {
      subject = await start(() => time);
    });
    afterAll(() => subject.end());

    /** Somebody whom the store has never seen. */
    const somebody = (platform = 'discord'): Account => {
      people += 1;
      return { platform, person: `person ${people}` };
    };
    const none = { own: null, room: null };
    const put = (key: string, data: Record<string, unknown>, expects: number | null = null): Change => ({
      do: 'put',
      kind: 'recipe',
      key,
      data,
      expects,
    });
    const bell = (id: string, dueAt: number, more: Partial<NewReminder> = {}): Change => ({
      do: 'remind',
      reminder: {
        id,
        dueAt,
        platform: `p${people}`,
        place: 'room',
        person: 'me',
        address: '',
        about: { kind: 'remind', text: 'turn the bars' },
        batch: null,
        ...more,
      },
    });
    const claim = (now: number, platforms = [`p${people}`], limit = 50, leaseUntil = now + minute) =>
      subject.store.bells.claim({ platforms, now, leaseUntil, limit });

    it('keeps what was committed, with its version and time', async () => {
      const own = subject.store.of(somebody());
      expect(await own.get('recipe', 'my soap')).toBeNull();
      const data = { name: 'My “Soap” 🧼', list: [1, 2.5, null], text: "'; drop table document; -- \u0000 \ud800" };
      expect(await own.commit([put('my soap', data)])).toEqual({ ok: true });
      const first = { kind: 'recipe', key: 'my soap', data, version: 1, savedAt: time };
      expect(await own.get('recipe', 'my soap')).toEqual(first);
      time += minute;
      await own.commit([put('my soap', { name: 'other' })]);
      expect(await own.get('recipe', 'my soap')).toEqual({
        ...first,
        data: { name: 'other' },
        version: 2,
        savedAt: time,
      });
      expect(await own.get('batch', 'my soap')).toBeNull();
      await own.commit([{ do: 'remove', kind: 'recipe', key: 'my soap' }]);
      expect(await own.get('recipe', 'my soap')).toBeNull();
    });

    it('writes all changes of a commit or none', async () => {
      const own = subject.store.of(somebody());
      expect(await own.commit([put('a', {}), put('b', {}, 7), bell('r', 1)])).toEqual({ ok: false, why: 'conflict' });
      expect(await own.count('recipe')).toBe(0);
      expect(await own.reminders()).toEqual([]);
      await expect(own.commit([put('a', {}), put('', {})])).rejects.toThrow(RangeError);
      await expect(own.commit([put('a', {}), put('a\0b', {})])).rejects.toThrow(RangeError);
      await expect(own.commit([put('a', {}), put('x'.repeat(201), {})])).rejects.toThrow(RangeError);
      await expect(own.commit([put('a', {}), put('\ud800', {})])).rejects.toThrow(RangeError);
      expect([await own.get('recipe', 'a\0b'), await own.list('recipe', { prefix: '\ud800', limit: 9 })]).toEqual([
        null,
        [],
      ]);
      expect(await own.count('recipe')).toBe(0);
    });

    it('tells a writer that somebody else was first', async () => {
      const own = subject.store.of(somebody());
      expect(await own.commit([put('a', { by: 1 }, 0)])).toEqual({ ok: true });
      expect(await own.commit([put('a', { by: 2 }, 0)])).toEqual({ ok: false, why: 'conflict' });
      expect(await own.commit([put('a', { by: 3 }, 1)])).toEqual({ ok: true });
      expect(await own.commit([put('a', { by: 4 }, 1)])).toEqual({ ok: false, why: 'conflict' });
      expect((await own.get('recipe', 'a'))?.data).toEqual({ by: 3 });
      const both = await Promise.all([1, 2, 3, 4].map((by) => own.commit([put('a', { by }, 2)])));
      expect(both.filter(({ ok }) => ok)).toHaveLength(1);
    });

    it('lists keys in the order of their code points, by prefix and in pages', async () => {
      const own = subject.store.of(somebody());
      // U+FF21 stands before U+1F9FC by code point, behind it by UTF-16 unit.
      const keys = ['Z', 'a', 'a b', 'ab', 'b%', 'b_', 'é', '\uff21', '🧼', '🧼 2', '\u{10ffff}', '\u{10ffff}x'];
      await own.commit(keys.toReversed().map((key) => put(key, {})));
      const listed = async (page: { prefix?: string; after?: string; limit: number }) =>
        (await own.list('recipe', page)).map(({ key }) => key);
      expect(await listed({ limit: 100 })).toEqual(keys);
      expect(await listed({ limit: 3, after: 'a' })).toEqual(['a b', 'ab', 'b%']);
      expect(await listed({ limit: 100, prefix: 'a' })).toEqual(['a', 'a b', 'ab']);
      expect(await listed({ limit: 100, prefix: 'a', after: 'a' })).toEqual(['a b', 'ab']);
      expect(await listed({ limit: 100, prefix: 'b%' })).toEqual(['b%']);
      expect(await listed({ limit: 100, prefix: '🧼' })).toEqual(['🧼', '🧼 2']);
      expect(await listed({ limit: 100, prefix: '\u{10ffff}' })).toEqual(['\u{10ffff}', '\u{10ffff}x']);
      expect(await own.count('recipe')).toBe(keys.length);
    });

    it('lets nobody see or change what is of others, whatever their names', async () => {
      const { store } = subject;
      const a = { platform: 'discord', person: "x' or '1'='1" };
      const others = [
        store.of({ platform: 'discord', person: 'x' }),
        store.of({ platform: 'matrix', person: a.person }),
        store.of({ platform: 'Discord', person: a.person }),
        store.room({ platform: 'discord', place: a.person }),
      ];
      await store.of(a).commit([put('mine', { secret: true }), bell('mine', 5)]);
      for (const own of others) {
        expect(await own.get('recipe', 'mine')).toBeNull();
        expect(await own.list('recipe', { limit: 10 })).toEqual([]);
        expect(await own.reminders()).toEqual([]);
        await own.commit([
          { do: 'remove', kind: 'recipe', key: 'mine' },
          { do: 'cancel', id: 'mine' },
        ]);
        await own.commit([{ do: 'move', id: 'mine', dueAt: 9 }, bell('mine', 7), put('mine', { secret: false })]);
        await own.erase();
      }
      expect((await store.of(a).get('recipe', 'mine'))?.data).toEqual({ secret: true });
      expect((await store.of(a).reminders()).map(({ dueAt }) => dueAt)).toEqual([5]);
      await store.of(a).erase();
    });

    it('looks up at once what a person and a room keep under one key', async () => {
      const { store } = subject;
      const [{ platform, person }, other] = [somebody(), somebody()];
      const who = { platform, person, place: person };
      const both = (key: string) => store.both(who, 'settings', key);
      const settings = (key: string, data: Data, until?: number): Change => ({
        ...{ do: 'put', kind: 'settings', key, data, expects: null },
        ...(until === undefined ? {} : { until }),
      });
      expect(await both('own')).toEqual({ own: null, room: null });
      await store.of(who).commit([settings('own', { by: 'person' }), settings('short', {}, time + minute)]);
      expect(await both('own')).toEqual({ own: { by: 'person' }, room: null });
      await store.room(who).commit([settings('own', { by: 'room' }), settings('theirs', { by: 'room' })]);
      await store.of(other).commit([settings('own', { by: 'other' })]);
      expect(await both('own')).toEqual({ own: { by: 'person' }, room: { by: 'room' } });
      expect(await both('theirs')).toEqual({ own: null, room: { by: 'room' } });
      expect(await store.both(who, 'recipe', 'own')).toEqual({ own: null, room: null });
      expect(await both('short')).toEqual({ own: {}, room: null });
      time += minute;
      expect(await both('short')).toEqual({ own: null, room: null });
    });

    it('looks up anew for an account that was joined, or to whom something was told', async () => {
      const { store } = subject;
      const [a, b, c] = [somebody(), somebody(), somebody()];
      const both = (who: Account) => store.both({ ...who, place: 'nowhere' }, 'settings', 'own');
      const set: Change = { do: 'put', kind: 'settings', key: 'own', data: { by: 'a' }, expects: null };
      await store.of(a).commit([set]);
      expect(await both(b)).toEqual(none);
      await store.link(b, await store.of(a).newLinkCode(time), time);
      expect(await both(b)).toEqual({ own: { by: 'a' }, room: null });
      await store.of(c).commit([bell('a', 9)]);
      const [claimed] = await claim(10);
      expect(await both(c)).toEqual(none);
      if (claimed) await store.bells.told(claimed, [set]);
      expect(await both(c)).toEqual({ own: { by: 'a' }, room: null });
    });

    it('hides what has outlived its time, and sweeps it away', async () => {
      const own = subject.store.of(somebody());
      const values = subject.store.values('contract');
      const short: Change = {
        do: 'put',
        kind: 'context',
        key: 'room',
        data: { turn: 1 },
        expects: null,
        until: time + minute,
      };
      await own.commit([short]);
      await values.set('k', 'v', time + minute);
      await values.set('stays', 'v');
      expect(await own.count('context')).toBe(1);
      time += minute;
      expect(await own.get('context', 'room')).toBeNull();
      expect(await own.list('context', { limit: 9 })).toEqual([]);
      expect(await own.count('context')).toBe(0);
      expect(await values.get('k')).toBeNull();
      expect(await own.commit([{ ...short, expects: 1, until: time + minute }])).toEqual({
        ok: false,
        why: 'conflict',
      });
      expect(await own.commit([{ ...short, expects: 0, until: time + minute }])).toEqual({ ok: true });
      expect((await own.get('context', 'room'))?.version).toBe(1);
      await subject.store.sweep(time + minute);
      time -= 10 * minute;
      expect(await own.get('context', 'room')).toBeNull();
      expect(await values.get('k')).toBeNull();
      expect(await values.get('stays')).toBe('v');
    });

    it('keeps the values of adapters apart', async () => {
      const [one, two] = [subject.store.values('one'), subject.store.values('two')];
      await one.set('k', 'a');
      await one.set('k', 'b');
      expect([await one.get('k'), await two.get('k')]).toEqual(['b', null]);
      await two.delete('k');
      expect(await one.get('k')).toBe('b');
      await one.delete('k');
      expect(await one.get('k')).toBeNull();
    });

    it('takes one reminder for the same id, and moves and cancels it', async () => {
      const own = subject.store.of(somebody());
      await own.commit([bell('a', 100), bell('b', 50, { batch: 'lot 1', address: 'thread' })]);
      await own.commit([bell('a', 999)]);
      const said = (await own.reminders()).map(({ id, dueAt, batch }) => [id, dueAt, batch]);
      expect(said).toEqual([
        ['b', 50, 'lot 1'],
        ['a', 100, null],
      ]);
      await own.commit([
        { do: 'move', id: 'a', dueAt: 20 },
        { do: 'move', id: 'unknown', dueAt: 1 },
      ]);
      expect((await own.reminders()).map(({ id }) => id)).toEqual(['a', 'b']);
      await own.commit([{ do: 'remove', kind: 'batch', key: 'lot 1' }]);
      expect((await own.reminders()).map(({ id }) => id)).toEqual(['a']);
      await own.commit([{ do: 'cancel', id: 'a' }]);
      expect(await own.reminders()).toEqual([]);
    });

    it('hands a due reminder to one asker only, until the lease ends', async () => {
      const account = somebody();
      const own = subject.store.of(account);
      await own.commit([bell('late', 10), bell('later', 20), bell('not yet', 31)]);
      expect(await subject.store.bells.next([`p${people}`])).toBe(10);
      expect(await claim(30, ['elsewhere'])).toEqual([]);
      expect((await claim(9)).length).toBe(0);
      const first = await claim(30, [`p${people}`], 1);
      expect(first.map(({ id, attempt, dueAt }) => [id, attempt, dueAt])).toEqual([['late', 1, 10]]);
      expect((await claim(30)).map(({ id }) => id)).toEqual(['later']);
      expect(await claim(30)).toEqual([]);
      expect(await subject.store.bells.next([`p${people}`, 'elsewhere'])).toBe(31);
      const again = await claim(30 + minute);
      expect(again.map(({ id, attempt }) => [id, attempt])).toEqual([
        ['late', 2],
        ['later', 2],
        ['not yet', 1],
      ]);
      for (const one of again) await subject.store.bells.told(one);
      expect(await subject.store.bells.next([`p${people}`])).toBeNull();
      expect(await own.reminders()).toEqual([]);
    });

    it('takes the eldest first over several platforms', async () => {
      const own = subject.store.of(somebody());
      const [a, b] = [`pa${people}`, `pb${people}`];
      const due = [3, 1, 4, 1.5, 9, 2.5].map((at, i) => bell(`r${i}`, at * 10, { platform: i % 2 ? a : b }));
      await own.commit(due);
      const said = async () => (await claim(50, [a, b], 2)).map(({ dueAt }) => dueAt);
      expect([await said(), await said(), await said()]).toEqual([[10, 15], [25, 30], [40]]);
    });

    it('commits what was told together with what comes of it', async () => {
      const account = somebody();
      const own = subject.store.of(account);
      await own.commit([bell('a', 1)]);
      const [claimed] = await claim(5);
      if (!claimed) throw new Error('nothing was claimed');
      await claimed.own.commit([put('seen', { by: 'the bell' })]);
      await subject.store.bells.told(claimed, [put('told', {}), bell('next', 9)]);
      expect((await own.list('recipe', { limit: 9 })).map(({ key }) => key)).toEqual(['seen', 'told']);
      expect((await own.reminders()).map(({ id }) => id)).toEqual(['next']);
      // A second time, by whoever had it before: nothing comes of it.
      await subject.store.bells.told(claimed, [put('twice', {})]);
      expect(await own.get('recipe', 'twice')).toBeNull();
      const [next] = await claim(10);
      if (!next) throw new Error('nothing was claimed');
      await expect(subject.store.bells.told(next, [put('x', {}), put('told', {}, 0)])).rejects.toThrow();
      expect(await own.get('recipe', 'x')).toBeNull();
      expect(await own.reminders()).toHaveLength(1);
    });

    it('keeps a reminder that was moved while it was told', async () => {
      const own = subject.store.of(somebody());
      await own.commit([bell('a', 1)]);
      const [claimed] = await claim(5);
      if (!claimed) throw new Error('nothing was claimed');
      await own.commit([{ do: 'move', id: 'a', dueAt: 100 }]);
      await subject.store.bells.told(claimed, [put('told', {})]);
      expect((await own.reminders()).map(({ dueAt }) => dueAt)).toEqual([100]);
      expect(await own.get('recipe', 'told')).toBeNull();
      expect((await claim(100)).map(({ attempt }) => attempt)).toEqual([1]);
    });

    it('tries again when it was said to', async () => {
      const own = subject.store.of(somebody());
      await own.commit([bell('a', 1)]);
      const [first] = await claim(5);
      if (!first) throw new Error('nothing was claimed');
      await subject.store.bells.again(first, 500);
      expect(await subject.store.bells.next([`p${people}`])).toBe(500);
      const [second] = await claim(500);
      expect([second?.attempt, second?.dueAt]).toEqual([2, 1]);
      // By then another process has it.
      await subject.store.bells.again(first, 501);
      expect(await claim(502)).toEqual([]);
    });

    it('stands a clock that is set back and forth', async () => {
      const own = subject.store.of(somebody());
      await own.commit([bell('a', 1000)]);
      expect(await claim(2000, [`p${people}`], 9, 3000)).toHaveLength(1);
      expect(await claim(500)).toEqual([]);
      expect(await claim(2999)).toEqual([]);
      expect((await claim(3000)).map(({ attempt }) => attempt)).toEqual([2]);
    });

    it('joins the accounts of one person by a code, once', async () => {
      const { store } = subject;
      const [a, b, c] = [somebody('discord'), somebody('matrix'), somebody('matrix')];
      const lot = (text: string): Change => ({
        do: 'put',
        kind: 'batch',
        key: 'lot',
        data: { lot: 'lot', text },
        expects: 0,
      });
      await store.of(a).commit([put('soap', { name: 'Soap' }), put('soap 2', { name: 'Soap 2' }), lot('a')]);
      await store.of(a).commit([{ do: 'put', kind: 'settings', key: 'own', data: { of: 'a' }, expects: 0 }]);
      await store
        .of(b)
        .commit([put('soap', { name: 'SOAP' }), put('only b', {}), lot('b'), bell('r', 5, { batch: 'lot' })]);
      await store.of(b).commit([{ do: 'put', kind: 'settings', key: 'own', data: { of: 'b' }, expects: 0 }]);
      const [claimed] = await claim(6);
      if (!claimed) throw new Error('nothing was claimed');

      const code = await store.of(a).newLinkCode(time);
      expect(await store.link(a, code, time)).toEqual({ ok: false, why: 'same-owner' });
      expect(await store.link(c, code, time + 60 * minute)).toEqual({ ok: false, why: 'unknown-code' });
      expect(await store.link(b, code, time + minute)).toEqual({ ok: true });
      expect(await store.link(c, code, time + minute)).toEqual({ ok: false, why: 'unknown-code' });

      for (const account of [a, b]) {
        const own = store.of(account);
        expect(await own.accounts()).toEqual([a, b]);
        const recipes = (await own.list('recipe', { limit: 9 })).map(({ key, data }) => [key, data['name']]);
        expect(recipes).toEqual([
          ['only b', undefined],
          ['soap', 'Soap'],
          ['soap 2', 'Soap 2'],
          ['soap 3', 'SOAP 3'],
        ]);
        const lots = (await own.list('batch', { limit: 9 })).map(({ data }) => data);
        expect(lots).toEqual([
          { lot: 'lot', text: 'a' },
          { lot: 'lot-2', text: 'b' },
        ]);
        expect((await own.get('settings', 'own'))?.data).toEqual({ of: 'a' });
        expect((await own.reminders()).map(({ batch }) => batch)).toEqual(['lot-2']);
      }
      expect(await store.of(c).accounts()).toEqual([]);
      await subject.store.bells.told(claimed, [put('told after', {})]);
      expect(await store.of(a).reminders()).toEqual([]);
      expect(await store.of(a).get('recipe', 'told after')).not.toBeNull();

      await store.unlink(b);
      expect(await store.of(b).accounts()).toEqual([]);
      expect(await store.of(b).count('recipe')).toBe(0);
      await store.unlink(a);
      expect(await store.of(a).accounts()).toEqual([a]);
      expect(await store.of(a).count('recipe')).toBe(5);
    });

    it('makes a new code the only one, and none for a room', async () => {
      const { store } = subject;
      const [a, b] = [somebody(), somebody()];
      const first = await store.of(a).newLinkCode(time);
      const second = await store.of(a).newLinkCode(time);
      expect(await store.link(b, first, time)).toEqual({ ok: false, why: 'unknown-code' });
      expect(await store.link(b, second, time)).toEqual({ ok: true });
      await expect(store.room({ platform: 'discord', place: 'x' }).newLinkCode(time)).rejects.toThrow(TypeError);
    });

    it('erases everything of an owner, and nothing else', async () => {
      const { store } = subject;
      const [a, b] = [somebody(), somebody()];
      await store.of(b).commit([put('stays', {}), bell('stays', 5)]);
      await store.of(a).commit([put('goes', {}), bell('goes', 5)]);
      const code = await store.of(a).newLinkCode(time);
      await store.of(a).erase();
      expect(await store.of(a).count('recipe')).toBe(0);
      expect(await store.of(a).reminders()).toEqual([]);
      expect(await store.of(a).accounts()).toEqual([]);
      expect(await store.link(b, code, time)).toEqual({ ok: false, why: 'unknown-code' });
      expect((await claim(10)).map(({ id }) => id)).toEqual(['stays']);
      expect(await store.of(b).count('recipe')).toBe(1);
      await store.of(a).commit([put('new', {}, 0)]);
      expect(await store.of(a).count('recipe')).toBe(1);
    });

    it('erases a room at its time, unless that is taken back', async () => {
      const { store } = subject;
      const rooms = ['leaves', 'comes back'].map((place) =>
        store.room({ platform: 'discord', place: `${place} ${people}` }),
      );
      for (const room of rooms) {
        await room.commit([put('default', {})]);
        await room.eraseAt(time + minute);
      }
      await rooms[1]?.eraseAt(null);
      await store.sweep(time);
      expect(await Promise.all(rooms.map((room) => room.count('recipe')))).toEqual([1, 1]);
      await store.sweep(time + minute);
      expect(await Promise.all(rooms.map((room) => room.count('recipe')))).toEqual([0, 1]);
    });
  });
}
