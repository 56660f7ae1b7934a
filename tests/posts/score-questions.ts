import { readFileSync } from 'node:fs';
import type { Bot } from '../../src/index.ts';

/** A question of somebody's hand with a verdict that was reckoned apart from the product. */
export interface Question {
  readonly id: string;
  readonly text: string;
  readonly expect: Expected;
  readonly why?: string;
}

type Ends = { readonly low: number; readonly high: number };

export interface Expected {
  readonly command?: string | readonly string[];
  readonly fault?: string | readonly string[];
  readonly value?: number;
  readonly unit?: string;
  /** Relative; of `value`, alkali and water. */
  readonly tolerance?: number;
  readonly alkali?: Readonly<Record<string, number>>;
  readonly fats?: Readonly<Record<string, number>>;
  readonly fatsTolerance?: number;
  readonly waterGrams?: number;
  readonly superfat?: readonly [number, number];
  readonly verdict?: string;
  readonly saponification?: Ends;
  readonly iodine?: Ends;
  readonly melting?: Ends;
  readonly density?: Ends;
  /** Figures that stand in the answer, each within the tolerance, in whatever unit it is asked. */
  readonly figures?: readonly number[];
  /** One of these does. */
  readonly anyFigure?: readonly number[];
  /** Words that the answer, or the fault, must hold. */
  readonly mentions?: readonly string[];
  /** True where the answer must say that something was taken or minded. */
  readonly warns?: boolean;
}

/** `wrong`: answered what is not so; `needless`: asked what it could know; `wrong-fault`: refused for another reason. */
export type Outcome = 'right' | 'wrong' | 'needless' | 'wrong-fault';

export const questions = (set: string): readonly Question[] =>
  JSON.parse(readFileSync(new URL(`${set}.json`, import.meta.url), 'utf8')) as Question[];

interface Result {
  readonly value?: number;
  readonly unit?: string;
  readonly recipe?: {
    readonly fats: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number }[];
    readonly water: { readonly grams: number };
  };
  readonly superfat?: { readonly nominal: number };
  readonly verdict?: string;
  readonly saponification?: Ends | null;
  readonly iodine?: Ends | null;
  readonly melting?: Ends | null;
  readonly density?: Ends | null;
}

const listOf = <T>(one: T | readonly T[] | undefined): readonly T[] =>
  one === undefined ? [] : Array.isArray(one) ? (one as readonly T[]) : [one as T];

/** Tenths of a degree and the like near nought are compared as they are. */
const near = (got: number | undefined, want: number, tolerance: number): boolean =>
  got !== undefined && Math.abs(got - want) <= tolerance * Math.max(Math.abs(want), 1e-3) + 1e-9;

const sameEnds = (got: Ends | null | undefined, want: Ends, tolerance: number): boolean =>
  got !== null && got !== undefined && near(got.low, want.low, tolerance) && near(got.high, want.high, tolerance);

function sameGrams(
  got: readonly { readonly id: string; readonly grams: number }[],
  want: Readonly<Record<string, number>>,
  tolerance: number,
): boolean {
  const all = new Map(got.map(({ id, grams }) => [id, grams]));
  return (
    all.size === Object.keys(want).length &&
    Object.entries(want).every(([id, grams]) => near(all.get(id), grams, tolerance))
  );
}

const figuresIn = (text: string): readonly number[] =>
  (text.match(/\d+(?:[ \u202f\u00a0,]\d{3}(?!\d))*(?:\.\d+)?/g) ?? []).map((figure) =>
    Number(figure.replace(/[^\d.]/g, '')),
  );

/** What an answer misses of the verdict; empty where it meets it. */
function missed(expect: Expected, command: string, result: Result, text: string, said: number): readonly string[] {
  const { tolerance = 0.005, fatsTolerance = 0.005 } = expect;
  const { recipe } = result;
  const commands = listOf(expect.command);
  const out: string[] = [];
  const must = (ok: boolean, what: string): void => {
    if (!ok) out.push(what);
  };
  must(commands.length === 0 || commands.includes(command), 'command');
  if (expect.value !== undefined) must(near(result.value, expect.value, tolerance), 'value');
  if (expect.unit !== undefined) must(result.unit === expect.unit, 'unit');
  if (expect.alkali) must(recipe !== undefined && sameGrams(recipe.alkali, expect.alkali, tolerance), 'alkali');
  if (expect.fats) must(recipe !== undefined && sameGrams(recipe.fats, expect.fats, fatsTolerance), 'fats');
  if (expect.waterGrams !== undefined)
    must(near(recipe?.water.grams, expect.waterGrams, Math.max(tolerance, 0.01)), 'water');
  if (expect.superfat) {
    const { nominal = Number.NaN } = result.superfat ?? {};
    must(nominal >= expect.superfat[0] && nominal <= expect.superfat[1], 'superfat');
  }
  if (expect.verdict) must(result.verdict === expect.verdict, 'verdict');
  for (const key of ['saponification', 'iodine', 'melting', 'density'] as const) {
    const want = expect[key];
    if (want) must(sameEnds(result[key], want, tolerance), key);
  }
  const stands = (want: number): boolean => figuresIn(text).some((figure) => near(figure, want, tolerance));
  for (const figure of expect.figures ?? []) must(stands(figure), `figure ${figure}`);
  if (expect.anyFigure) must(expect.anyFigure.some(stands), 'a figure');
  for (const word of expect.mentions ?? []) must(text.toLowerCase().includes(word.toLowerCase()), `mentions ${word}`);
  if (expect.warns) must(said > 0, 'warning');
  return out;
}

export interface Scored {
  readonly question: Question;
  readonly outcome: Outcome;
  readonly got: string;
}

export async function score(bot: Bot, question: Question, render: (answer: never) => string): Promise<Scored> {
  const { id, text, expect } = question;
  const reply = await bot.ask({ platform: 'test', place: id, person: id, text });
  const faults = listOf(expect.fault);
  if (!reply.ok) {
    const got = `${reply.fault.code}: ${reply.fault.message}`;
    const words = got.toLowerCase();
    const right =
      faults.includes(reply.fault.code) &&
      (expect.mentions ?? []).every((word) => `${words} ${reply.fault.hint.toLowerCase()}`.includes(word));
    return { question, outcome: right ? 'right' : faults.length > 0 ? 'wrong-fault' : 'needless', got };
  }
  const { command, result, assumptions, warnings, lead } = reply.answer;
  const lacks =
    faults.length > 0
      ? ['a fault']
      : missed(expect, command, result as Result, render(reply.answer as never), assumptions.length + warnings.length);
  const got = `${command}: ${lead} ${JSON.stringify(result).slice(0, 160)}`;
  return lacks.length === 0
    ? { question, outcome: 'right', got }
    : { question, outcome: 'wrong', got: `${got}; misses ${lacks.join(', ')}` };
}
