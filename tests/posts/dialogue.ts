import { readFileSync } from 'node:fs';
import type { Bot, Reply } from '../../src/index.ts';

/** What a turn must bring. An empty expectation accepts anything. */
export interface Expected {
  readonly ok?: boolean;
  readonly command?: string | readonly string[];
  readonly fault?: string | readonly string[];
  readonly fats?: Readonly<Record<string, number>>;
  readonly fatsTolerance?: number;
  readonly after?: Readonly<Record<string, number>>;
  readonly liquids?: Readonly<Record<string, number>>;
  readonly alkali?: Readonly<Record<string, number>>;
  readonly tolerance?: number;
  readonly purity?: number;
  readonly waterGrams?: number;
  readonly superfat?: readonly [number, number];
  readonly verdict?: string;
  readonly value?: number;
  readonly unit?: string;
  readonly saponification?: { readonly low: number; readonly high: number };
  readonly mentions?: readonly string[] | string;
  readonly warns?: boolean | readonly string[] | string;
}

export interface Dialogue {
  readonly id: string;
  readonly turns: readonly { readonly say: string; readonly expect: Expected }[];
}

export function dialogues(file: string): readonly Dialogue[] {
  return JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as Dialogue[];
}

interface Result {
  readonly value?: number;
  readonly unit?: string;
  readonly verdict?: string;
  readonly superfat?: { readonly nominal: number };
  readonly saponification?: { readonly low: number; readonly high: number };
  readonly recipe?: {
    readonly fats: readonly { readonly id: string; readonly grams: number }[];
    readonly after: readonly { readonly id: string; readonly grams: number }[];
    readonly liquids: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number; readonly purity: number }[];
    readonly water: { readonly grams: number };
  };
}

const listOf = (one: string | readonly string[] | undefined): readonly string[] =>
  one === undefined ? [] : typeof one === 'string' ? [one] : one;

const near = (got: number | undefined, want: number, share: number): boolean =>
  got !== undefined && Math.abs(got - want) <= share * Math.max(Math.abs(want), 1e-9) + 0.51 * Number(share < 0.006);

type Amounts = readonly { readonly id: string; readonly grams: number }[];

function amounts(
  what: string,
  got: Amounts | undefined,
  want: Readonly<Record<string, number>>,
  share: number,
): string[] {
  const all = new Map(got?.map(({ id, grams }) => [id, grams]));
  const wrong = Object.entries(want).filter(([id, grams]) => !near(all.get(id), grams, share));
  const more = [...all.keys()].filter((id) => !(id in want));
  return wrong.length + more.length === 0
    ? []
    : [`${what} ${JSON.stringify([...all])}, wanted ${JSON.stringify(want)}`];
}

/** `needless`: a question where an answer was due. `wrong`: anything else that is not as expected. */
export type Verdict = 'right' | 'needless' | 'wrong';

function judge(reply: Reply, expect: Expected): { readonly verdict: Verdict; readonly why: string } {
  const codes = listOf(expect.fault);
  if (!reply.ok) {
    const got = `${reply.fault.code}: ${reply.fault.message}`;
    if (codes.includes(reply.fault.code) || Object.keys(expect).length === 0) return { verdict: 'right', why: '' };
    return { verdict: codes.length > 0 ? 'wrong' : 'needless', why: got };
  }
  const { answer } = reply;
  const result = answer.result as Result;
  if (codes.length > 0 && expect.command === undefined && expect.ok === undefined)
    return { verdict: 'wrong', why: `answered by ${answer.command}: ${answer.lead}` };
  const commands = listOf(expect.command);
  const tolerance = expect.tolerance ?? 0.01;
  const said = [answer.lead, ...answer.assumptions, ...answer.warnings, JSON.stringify(answer.body)]
    .join('\n')
    .toLowerCase();
  const faults = [
    ...(commands.length > 0 && !commands.includes(answer.command) ? [`command ${answer.command}`] : []),
    ...(expect.fats ? amounts('fats', result.recipe?.fats, expect.fats, expect.fatsTolerance ?? 0.005) : []),
    ...(expect.after ? amounts('after', result.recipe?.after, expect.after, expect.fatsTolerance ?? 0.005) : []),
    ...(expect.liquids
      ? amounts('liquids', result.recipe?.liquids, expect.liquids, expect.fatsTolerance ?? 0.005)
      : []),
    ...(expect.alkali ? amounts('alkali', result.recipe?.alkali, expect.alkali, tolerance) : []),
    ...(expect.purity !== undefined &&
    !result.recipe?.alkali.some(({ purity }) => near(purity, expect.purity ?? 0, 0.001))
      ? [`purity ${JSON.stringify(result.recipe?.alkali)}`]
      : []),
    ...(expect.waterGrams !== undefined &&
    !near(result.recipe?.water.grams, expect.waterGrams, Math.max(tolerance, 0.01))
      ? [`water ${result.recipe?.water.grams}`]
      : []),
    ...(expect.superfat &&
    !(
      (result.superfat?.nominal ?? Number.NaN) >= expect.superfat[0] &&
      (result.superfat?.nominal ?? Number.NaN) <= expect.superfat[1]
    )
      ? [`superfat ${result.superfat?.nominal}`]
      : []),
    ...(expect.verdict && result.verdict !== expect.verdict ? [`verdict ${result.verdict}`] : []),
    ...(expect.value !== undefined && !near(result.value, expect.value, tolerance) ? [`value ${result.value}`] : []),
    ...(expect.unit && result.unit !== expect.unit ? [`unit ${result.unit}`] : []),
    ...(expect.saponification &&
    !(
      near(result.saponification?.low, expect.saponification.low, tolerance) &&
      near(result.saponification?.high, expect.saponification.high, tolerance)
    )
      ? [`saponification ${JSON.stringify(result.saponification)}`]
      : []),
    ...listOf(expect.mentions)
      .filter((word) => !said.includes(word.toLowerCase()))
      .map((word) => `no word of "${word}"`),
  ];
  return faults.length === 0 ? { verdict: 'right', why: '' } : { verdict: 'wrong', why: faults.join('; ') };
}

export interface Scored {
  readonly id: string;
  readonly turn: number;
  readonly say: string;
  readonly verdict: Verdict;
  readonly why: string;
}

/** Every turn of a conversation, said to one bot by one person. */
export function play(bot: Bot, { id, turns }: Dialogue): Promise<readonly Scored[]> {
  return Array.fromAsync(turns, async ({ say, expect }, turn) => {
    const reply = await bot.ask({ platform: 'test', place: 'dialogues', person: id, text: say });
    return { id, turn: turn + 1, say, ...judge(reply, expect) };
  });
}
