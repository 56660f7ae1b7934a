// Kills the adapter at random moments while a human of another make asks in an encrypted room, and looks whether every
// message has one answer that can be read. `npm run kill:matrix [rounds] [seed]` (50 rounds unless said); the live
// tests run a few. Every third round the human begins a new session of keys, and the room has the bot change its own
// every three messages, so that keys travel both ways all the time; every tenth the server is killed too.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Bot, startBot } from './bot.ts';
import { openHuman } from './human.ts';
import { type Address, register, type Synapse, startSynapse } from './synapse/server.ts';

interface Asked {
  readonly id: string;
  readonly kilograms: number;
}

export interface Outcome {
  readonly messages: number;
  readonly kills: number;
  readonly serverKills: number;
  /** Milliseconds from each start until it answers. */
  readonly starts: readonly number[];
  /** What was wrong, in words; empty where every message was answered, seen once, and could be read. */
  readonly faults: readonly string[];
}

export interface KillOptions {
  readonly server: Address & Partial<Pick<Synapse, 'kill' | 'restart'>>;
  readonly rounds: number;
  readonly seed: number;
  readonly log?: (words: string) => void;
}

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

export async function killRounds({ server, rounds, seed, log = () => {} }: KillOptions): Promise<Outcome> {
  let state = seed;
  // A linear congruential generator: a seed gives the same moments again.
  const random = (): number => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-kill-'));
  const stamp = `${process.pid}-${Date.now().toString(36)}`;
  const user = await register(server, `killed-${stamp}`);
  await register(server, `asker-${stamp}`);
  const ann = await openHuman(server.url, `asker-${stamp}`, join(folder, 'human'));
  const faults: string[] = [];
  const starts: number[] = [];
  const all: Asked[] = [];
  let kills = 0;
  let serverKills = 0;
  let bot: Bot | undefined;

  const start = (): Bot => {
    const since = performance.now();
    const one = startBot({ url: server.url, user, data: join(folder, 'bot') });
    one.ready().then(
      () => starts.push(performance.now() - since),
      () => {},
    );
    return one;
  };
  const kill = async (): Promise<void> => {
    if (!bot) return;
    const how = await bot.kill();
    if (how === 'SIGKILL') kills += 1;
    else faults.push(`the bot ended by itself with ${how}: ${bot.out().slice(-500)}`);
  };
  const ask = async (room: string): Promise<Asked> => {
    const kilograms = all.length + 1;
    // With one transaction, so that a server that is killed meanwhile takes it once.
    const send = (): Promise<string> =>
      ann.send(
        room,
        'm.room.message',
        { msgtype: 'm.text', body: `!lye convert ${kilograms} kg to g` },
        `k${kilograms}`,
      );
    all.push({ id: '', kilograms });
    for (let tries = 0; ; tries += 1) {
      try {
        const asked = { id: await send(), kilograms };
        all[kilograms - 1] = asked;
        return asked;
      } catch (error) {
        if (tries > 30) throw error;
        await pause(300);
      }
    }
  };
  const isAnswered = ({ id }: Asked): boolean => ann.repliesTo(id).some(({ undecryptable }) => !undecryptable);

  try {
    bot = start();
    await bot.ready();
    const room = await ann.create({ encrypted: true, invite: [user], rotate: 3 });
    await ann.waitFor(room, user);
    await ask(room);
    for (let round = 1; round <= rounds; round += 1) {
      if (round % 3 === 0) await ann.rotate(room);
      const count = 1 + Math.floor(random() * 4);
      const gap = random() * 150;
      const isDown = random() < 0.3;
      if (isDown) await kill();
      const asked: Asked[] = [];
      const asking = (async () => {
        for (let i = 0; i < count; i += 1) {
          asked.push(await ask(room));
          await pause(gap);
        }
      })();
      if (isDown) {
        await asking;
        bot = start();
      }
      await pause(random() * 900);
      if (round % 10 === 0 && server.kill && server.restart) {
        await server.kill();
        serverKills += 1;
        await pause(100);
        await server.restart();
      }
      await kill();
      await asking;
      // Once more, while it takes up what it left.
      if (random() < 0.4) {
        bot = start();
        await pause(200 + random() * 900);
        await kill();
      }
      bot = start();
      try {
        await ann.until(() => asked.every(isAnswered), `answers of round ${round}`, 60);
      } catch (error) {
        faults.push(`${error}`);
      }
      log(`round ${round}: ${all.length} messages, ${kills} kills, ${faults.length} faults`);
    }
    await ann.until(() => all.every(isAnswered), 'the last answers', 30).catch((error) => faults.push(`${error}`));
    await pause(1500);

    // What the human saw, and what the server holds: one answer each.
    const held = new Map<string, number>();
    for (const { sender, type, content } of await ann.history(room)) {
      if (sender !== user) continue;
      if (type !== 'm.room.encrypted' && type !== 'm.room.member') faults.push(`the bot said ${type} in clear`);
      const to = content['m.relates_to']?.['m.in_reply_to']?.event_id;
      if (to) held.set(to, (held.get(to) ?? 0) + 1);
    }
    for (const { id, kilograms } of all) {
      const bodies = ann.repliesTo(id).map(({ content }) => String(content.body));
      const isRight = bodies.length === 1 && bodies[0]?.replace(/[\s,.]/g, '').includes(`${kilograms}000g`);
      if (!isRight) faults.push(`${kilograms} kg: the human has ${JSON.stringify(bodies)}`);
      if (held.get(id) !== 1) faults.push(`${kilograms} kg: the server holds ${held.get(id) ?? 0} answers`);
    }
    const dark = ann.heard().filter(({ undecryptable }) => undecryptable).length;
    if (dark > 0) faults.push(`${dark} events that the human never could read`);
    return { messages: all.length, kills, serverKills, starts, faults };
  } finally {
    await bot?.kill();
    await ann.leave();
    rmSync(folder, { recursive: true, force: true });
  }
}

if (import.meta.main) {
  const rounds = Number(process.argv[2] ?? 50);
  const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
  const server = await startSynapse();
  try {
    const log = (words: string): void => console.log(words);
    const { messages, kills, serverKills, starts, faults } = await killRounds({ server, rounds, seed, log });
    for (const fault of faults) console.log(`FAULT ${fault}`);
    const sorted = starts.toSorted((a, b) => a - b);
    const ms = (value = Number.NaN): string => `${Math.round(value)} ms`;
    console.log(
      `${rounds} rounds, seed ${seed}: ${messages} messages, ${kills} kills of the bot, ${serverKills} of the server; ` +
        `start to ready: median ${ms(sorted[sorted.length >> 1])}, longest ${ms(sorted.at(-1))}`,
    );
    console.log(`${messages - faults.length} messages well, ${faults.length} faults`);
    if (faults.length > 0) process.exitCode = 1;
  } finally {
    await server.stop();
  }
}
