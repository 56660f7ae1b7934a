// `npm run bench`: one JSON line a figure. Times of processes and memory are ratios to an empty Node process measured
// in the same run, so that they mean the same on any machine.
import { join } from 'node:path';
import { idleMegabytes, processTimes } from './measure.ts';

const dist = join(import.meta.dirname, '../../dist');

const figure = (name: string, value: number, unit: string, limit: number, more: Record<string, number> = {}): void => {
  const ok = value <= limit;
  if (!ok) process.exitCode = 1;
  const short = (number: number) => Number(number.toPrecision(4));
  const rest = Object.fromEntries(Object.entries(more).map(([key, number]) => [key, short(number)]));
  console.log(JSON.stringify({ name, value: short(value), unit, limit, ok, ...rest }));
};

const grams = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';
const ounces = '16 oz olive oil, 8 oz coconut oil, 2.6 oz castor oil, 3.6 oz NaOH, 8.1 oz water';

const ask = join(dist, 'ask.js');
const [empty = 0, inGrams = 0, inOunces = 0] = processTimes(
  [
    ['-e', '0'],
    [ask, grams],
    [ask, ounces],
  ],
  21,
);
const processUnit = '× empty Node process';
figure('ask, one shot, grams', inGrams / empty, processUnit, 2, { milliseconds: inGrams, emptyMilliseconds: empty });
figure('ask, one shot, ounces', inOunces / empty, processUnit, 2, { milliseconds: inOunces, emptyMilliseconds: empty });

const idleEmpty = await idleMegabytes(['-e', 'setInterval(() => {}, 1e6)']);
const idleChat = await idleMegabytes([join(dist, 'run.js')]);
figure('chat, idle memory', idleChat / idleEmpty, processUnit, 1.4, { megabytes: idleChat, emptyMegabytes: idleEmpty });
