// `npm run bench:matrix [messages]`: what the Matrix adapter costs, beside a bare echo bot on the same library and the
// same server in the same run; one JSON line a figure. Each party is a process of its own. The server answers some ten
// messages a second, so that 2,000 for each of four parties take a good quarter of an hour.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Lags } from '../matrix/bench/lag.ts';
import { type Human, openHuman } from '../matrix/human.ts';
import { password, register, type Synapse, startSynapse } from '../matrix/synapse/server.ts';
import type { Figure } from './discord.ts';
import { median } from './measure.ts';
import { party } from './party.ts';

const file = (path: string): string => join(import.meta.dirname, '../..', path);
type Party = ReturnType<typeof party>;

/** People who ask by turns, each in a room of their own. */
const people = 2;
/** Messages of one party before it is the other's turn. */
const batch = 100;

interface Side {
  readonly name: 'ours' | 'echo';
  readonly isEncrypted: boolean;
  readonly user: string;
  readonly begin: (preload?: readonly string[]) => Party;
  /** One room with each of the people. */
  readonly rooms: string[];
}

const lagFile = file('tests/matrix/bench/lag.ts');
let asked = 0;
const recipe = (): string => {
  asked += 1;
  return (
    `${450 + (asked % 97)} g olive oil, 225 g coconut oil, 75 g castor oil, 60 g shea butter, 90 g sunflower oil, ` +
    '122 g NaOH, 280 g water'
  );
};

async function open(server: Synapse, folder: string, name: Side['name'], isEncrypted: boolean): Promise<Side> {
  const own = `${name}-${isEncrypted ? 'encrypted' : 'clear'}`;
  const user = await register(server, own);
  const env = {
    MATRIX_HOMESERVER_URL: server.url,
    MATRIX_USER: user,
    MATRIX_PASSWORD: password,
    MATRIX_RATE: '100000',
  };
  const data = join(folder, own);
  const words =
    name === 'ours' ? [file('deploy/run.mjs'), 'matrix', '--data', data] : [file('tests/matrix/bench/echo.ts'), data];
  const begin: Side['begin'] = (preload = []) => party([...preload.flatMap((one) => ['--import', one]), ...words], env);
  return { name, isEncrypted, user, begin, rooms: [] };
}

const ready = async (one: Party): Promise<Party> => {
  await one.said(/lyeward: ready as/);
  return one;
};

/** Asks so many times, one at a time. */
async function ask({ rooms }: Side, humans: readonly Human[], count: number): Promise<void> {
  for (let i = 0; i < count; i += 1) {
    const human = humans[i % humans.length];
    const room = rooms[i % rooms.length];
    if (!human || room === undefined) throw new Error('nobody asks');
    await human.answer(await human.say(room, `!lye check ${recipe()}`));
  }
}

const ninetyNine = (all: readonly number[]): number =>
  all.toSorted((a, b) => a - b)[Math.floor(all.length * 0.99)] ?? Number.NaN;
const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;

/** Processor time and memory of so many answers of each, in turns. */
async function costs(sides: readonly Side[], humans: readonly Human[], messages: number) {
  const parties = await Promise.all(sides.map((side) => ready(side.begin())));
  const cpu = sides.map((): number[] => []);
  const megabytes = sides.map((): number[] => []);
  for (let done = 0; done < messages; done += batch) {
    for (const [i, side] of sides.entries()) {
      const one = parties[i];
      if (!one) continue;
      const before = await one.usage();
      await ask(side, humans, batch);
      const after = await one.usage();
      // The first batch only warms up.
      if (done > 0) cpu[i]?.push((after.cpu - before.cpu) / batch);
      megabytes[i]?.push(after.megabytes);
    }
    console.error(`${sides[0]?.isEncrypted ? 'encrypted' : 'clear'}: ${done + batch} of ${messages}`);
  }
  for (const one of parties) await one.end();
  return { cpu: cpu.map(median), megabytes };
}

async function lags(sides: readonly Side[], humans: readonly Human[], messages: number): Promise<readonly Lags[]> {
  const parties = await Promise.all(sides.map((side) => ready(side.begin([lagFile]))));
  const all: Lags[] = [];
  for (const [i, side] of sides.entries()) {
    await ask(side, humans, 30);
    await parties[i]?.ask('lags');
    await ask(side, humans, messages);
    all.push((await parties[i]?.ask<Lags>('lags')) ?? []);
    if ((all[i]?.length ?? 0) < messages) throw new Error(`saw ${all[i]?.length} of ${messages} answers leave`);
  }
  for (const one of parties) await one.end();
  return all;
}

/** Milliseconds from the start of a process to the answer to what waited. */
async function coldStarts(sides: readonly Side[], humans: readonly Human[]): Promise<readonly number[]> {
  const times = sides.map((): number[] => []);
  const [human] = humans;
  for (let round = -1; round < 7; round += 1) {
    for (const [i, { begin, rooms }] of sides.entries()) {
      const id = await human?.say(rooms[0] ?? '', `!lye check ${recipe()}`);
      const since = performance.now();
      const one = begin();
      await human?.answer(id ?? '');
      if (round >= 0) times[i]?.push(performance.now() - since);
      await one.end();
    }
  }
  return times.map(median);
}

export async function matrixFigures(messages: number): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-bench-'));
  const server = await startSynapse();
  const humans: Human[] = [];
  const figures: Figure[] = [];
  try {
    for (let i = 0; i < people; i += 1) {
      await register(server, `person${i}`);
      humans.push(await openHuman(server.url, `person${i}`, join(folder, `person${i}`)));
    }
    for (const isEncrypted of [false, true]) {
      const kind = isEncrypted ? 'encrypted' : 'clear';
      const sides = [await open(server, folder, 'ours', isEncrypted), await open(server, folder, 'echo', isEncrypted)];
      for (const side of sides) {
        const one = await ready(side.begin());
        for (const human of humans) {
          const room = await human.create({ encrypted: isEncrypted, invite: [side.user] });
          await human.waitFor(room, side.user);
          side.rooms.push(room);
        }
        await ask(side, humans, people);
        await one.end();
      }

      const [ours = 0, echo = 0] = await coldStarts(sides, humans);
      figures.push({
        name: `matrix, ${kind}: cold start to first answer`,
        value: ours / echo,
        unit: '× bare echo bot',
        limit: 1.5,
        more: { milliseconds: ours, echoMilliseconds: echo },
      });

      const [own = [], bare = []] = await lags(sides, humans, 200);
      figures.push({
        name: `matrix, ${kind}: event to send in the process, 99 of 100, beyond the echo bot`,
        value: ninetyNine(own) - ninetyNine(bare),
        unit: 'ms',
        limit: 20,
        more: { whole: ninetyNine(own), median: median(own), echo: ninetyNine(bare), echoMedian: median(bare) },
      });

      const { cpu, megabytes } = await costs(sides, humans, messages);
      const [ourCpu = 0, echoCpu = 0] = cpu;
      figures.push({
        name: `matrix, ${kind}: CPU of an answer`,
        value: ourCpu / echoCpu,
        unit: '× bare echo bot',
        limit: 1.3,
        more: { microseconds: ourCpu, echoMicroseconds: echoCpu },
      });
      const [ourMemory = [], echoMemory = []] = megabytes;
      figures.push({
        name: `matrix, ${kind}: memory after ${messages} messages`,
        value: (ourMemory.at(-1) ?? 0) / (echoMemory.at(-1) ?? 0),
        unit: '× bare echo bot',
        limit: 1.3,
        more: { megabytes: ourMemory.at(-1) ?? 0, echoMegabytes: echoMemory.at(-1) ?? 0, first: ourMemory[0] ?? 0 },
      });
      // Nothing grows for ever: the last quarter beside the one before it.
      const quarter = Math.max(1, Math.floor(ourMemory.length / 4));
      const third = mean(ourMemory.slice(-2 * quarter, -quarter));
      const fourth = mean(ourMemory.slice(-quarter));
      figures.push({
        name: `matrix, ${kind}: memory, last quarter of the messages`,
        value: fourth / third,
        unit: '× the quarter before',
        limit: 1.03,
        more: { megabytes: fourth, before: third },
      });
    }
  } finally {
    for (const human of humans) await human.leave();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
  return figures;
}

if (import.meta.main) {
  const messages = Number(process.argv[2] ?? 2000);
  for (const { name, value, unit, limit, more } of await matrixFigures(messages)) {
    const short = (number: number): number => Number(number.toPrecision(3));
    const ok = value <= limit;
    if (!ok) process.exitCode = 1;
    const rest = Object.fromEntries(Object.entries(more).map(([key, number]) => [key, short(number)]));
    console.log(JSON.stringify({ name, value: short(value), unit, limit, ok, ...rest }));
  }
}
