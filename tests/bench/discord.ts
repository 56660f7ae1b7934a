// What the Discord adapter costs, beside a floor measured in the same run: `node tests/bench/discord.ts`, one JSON line
// a figure. Each party is a process of its own, so that CPU and memory are its alone; where the machine has two cores,
// the parties run on one and whoever asks on the other.
import { generateKeyPairSync, sign } from 'node:crypto';
import { Agent, request } from 'node:http';
import { join } from 'node:path';
import { applicationId, slash, token } from '../discord/standin/interactions.ts';
import { createStandIn, type StandIn } from '../discord/standin/server.ts';
import { median, nothingKept } from './measure.ts';
import { party } from './party.ts';

const file = (path: string): string => join(import.meta.dirname, '../..', path);
const recipe =
  '450 g olive oil, 225 g coconut oil, 75 g castor oil, 60 g shea butter, 90 g sunflower oil, 122 g NaOH, 280 g water';

export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly limit: number;
  readonly more: Readonly<Record<string, number>>;
}

const { publicKey, privateKey } = generateKeyPairSync('ed25519');
const hex = Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex');

interface Signed {
  readonly body: string;
  readonly time: string;
  readonly signature: string;
}
/** `varied`: no recipe is like one of before, so that nothing that is remembered serves. */
let asked = 0;
const signed = (count: number, varied = false): readonly Signed[] =>
  Array.from({ length: count }, () => {
    asked += 1;
    const text = varied ? recipe.replace('450', `${400 + (asked % 97)}.${asked}`) : recipe;
    const body = JSON.stringify(slash('check', { text }));
    const time = String(Math.floor(Date.now() / 1000));
    return { body, time, signature: sign(null, Buffer.from(time + body), privateKey).toString('hex') };
  });

/** Posts all, sixteen at a time; the milliseconds it took. */
async function postAll(port: number, all: readonly Signed[]): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: 16 });
  const one = ({ body, time, signature }: Signed): Promise<void> =>
    new Promise((resolve, reject) => {
      const headers = {
        'x-signature-ed25519': signature,
        'x-signature-timestamp': time,
        'content-type': 'application/json',
        'content-length': Buffer.byteLength(body),
      };
      request({ port, path: '/interactions', method: 'POST', headers, agent }, (response) => {
        if (response.statusCode !== 200) reject(new Error(`answered with ${response.statusCode}`));
        response.resume().on('end', resolve);
      })
        .on('error', reject)
        .end(body);
    });
  const waiting = all.values();
  const since = performance.now();
  await Promise.all(
    Array.from({ length: 16 }, async () => {
      for (const next of waiting) await one(next);
    }),
  );
  agent.destroy();
  return performance.now() - since;
}

async function http(): Promise<readonly Figure[]> {
  const env = { DISCORD_PUBLIC_KEY: hex, DISCORD_HTTP_PORT: '0', DISCORD_API_URL: 'http://127.0.0.1:9/api' };
  const parties = await Promise.all(
    [[file('tests/discord/bench/floor-http.ts')], [file('deploy/run.mjs'), 'discord-http', '--data', nothingKept]].map(
      (args) => party(args, env),
    ),
  );
  const ports = await Promise.all(parties.map(async ({ said }) => Number((await said(/port (\d+)/))[1])));
  const [floorParty, ourParty] = parties.map((one, i) => ({ ...one, port: ports[i] ?? 0 }));
  if (!floorParty || !ourParty) throw new Error('a party did not start');
  const cpu: number[][] = [[], [], []];
  const rate: number[][] = [[], [], []];
  const count = 2000;
  const sides = [
    { ...floorParty, varied: false },
    { ...ourParty, varied: false },
    { ...ourParty, varied: true },
  ];
  // In turns, so that a busy machine slows all; the first round only warms up.
  for (let round = -1; round < 7; round += 1) {
    for (const [i, { usage, port, varied }] of sides.entries()) {
      const all = signed(count, varied);
      const before = await usage();
      const took = await postAll(port, all);
      const after = await usage();
      if (round < 0) continue;
      cpu[i]?.push((after.cpu - before.cpu) / count);
      rate[i]?.push((1000 * count) / took);
    }
  }
  for (const { end } of parties) await end();
  const [floor = 0, ours = 0, varied = 0] = cpu.map(median);
  const [floorRate = 0, ourRate = 0] = rate.map(median);
  const more = {
    microseconds: ours,
    floorMicroseconds: floor,
    perSecond: ourRate,
    floorPerSecond: floorRate,
    everNewRecipes: varied / floor,
  };
  return [
    {
      name: 'discord: CPU of a check over HTTP',
      value: ours / floor,
      unit: '× verify, parse, fixed answer',
      limit: 1.35,
      more,
    },
  ];
}

/** Sends so many a second for so many seconds; the milliseconds to each first response. */
async function paced(discord: StandIn, perSecond: number, seconds: number): Promise<readonly number[]> {
  const times: Promise<number>[] = [];
  const begin = performance.now();
  for (let i = 0; i < perSecond * seconds; i += 1) {
    const due = begin + (1000 * i) / perSecond;
    const left = due - performance.now();
    if (left > 0) await new Promise((resolve) => setTimeout(resolve, left));
    const since = performance.now();
    times.push(discord.interact(slash('check', { text: recipe })).then(() => performance.now() - since));
  }
  return Promise.all(times);
}

async function gateway(): Promise<readonly Figure[]> {
  const sides: { readonly discord: StandIn; readonly side: Awaited<ReturnType<typeof party>> }[] = [];
  for (const args of [
    [file('tests/discord/bench/floor-gateway.ts')],
    [file('deploy/run.mjs'), 'discord', '--data', nothingKept],
  ]) {
    // Bodies are judged elsewhere; here that would only slow down whoever asks.
    const discord = await createStandIn({ token, applicationId, judged: false });
    const side = await party(args, { DISCORD_TOKEN: token, DISCORD_API_URL: discord.api });
    await discord.until(() => discord.connections().length > 0, 'the bot');
    sides.push({ discord, side });
  }
  await new Promise((resolve) => setTimeout(resolve, 2000));
  const idle = await Promise.all(sides.map(({ side }) => side.usage()));
  const cpu: number[][] = [[], []];
  const times: number[][] = [[], []];
  for (let round = -1; round < 5; round += 1) {
    for (const [i, { discord, side }] of sides.entries()) {
      const before = await side.usage();
      const took = await paced(discord, 50, 6);
      const after = await side.usage();
      if (round < 0) continue;
      cpu[i]?.push((after.cpu - before.cpu) / took.length);
      times[i]?.push(...took);
    }
  }
  for (const { discord, side } of sides) {
    await side.end();
    await discord.close();
  }
  const [floor = 0, ours = 0] = cpu.map(median);
  const ninetyNine = (all: readonly number[]): number =>
    all.toSorted((a, b) => a - b)[Math.floor(all.length * 0.99)] ?? Number.NaN;
  const [floorP99 = 0, p99 = 0] = times.map(ninetyNine);
  const [plain = 0, own = 0] = idle.map(({ megabytes }) => megabytes);
  return [
    {
      name: 'discord: CPU of a check over the gateway',
      value: ours / floor,
      unit: '× no-op command',
      limit: 1.3,
      more: { microseconds: ours, floorMicroseconds: floor },
    },
    {
      name: 'discord: idle memory',
      value: own / plain,
      unit: '× idle client',
      limit: 1.2,
      more: { megabytes: own, floorMegabytes: plain },
    },
    {
      name: 'discord: first response at 50/s, 99 of 100',
      value: p99,
      unit: 'ms',
      limit: 50,
      more: { median: median(times[1] ?? []), floor: floorP99 },
    },
  ];
}

export const discordFigures = async (): Promise<readonly Figure[]> => [...(await http()), ...(await gateway())];

if (import.meta.main) {
  for (const { name, value, unit, limit, more } of await discordFigures()) {
    const short = (number: number): number => Number(number.toPrecision(3));
    const ok = value <= limit;
    if (!ok) process.exitCode = 1;
    const rest = Object.fromEntries(Object.entries(more).map(([key, number]) => [key, short(number)]));
    console.log(JSON.stringify({ name, value: short(value), unit, limit, ok, ...rest }));
  }
}
