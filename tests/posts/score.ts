import { readFileSync } from 'node:fs';
import type { Bot } from '../../src/index.ts';

/** A post of somebody's hand with a verdict that was reckoned apart from the product. */
export interface Post {
  readonly id: string;
  readonly text: string;
  readonly expect: Expectation | { readonly anyOf: readonly Expectation[] };
  readonly why?: string;
}

type Grams = Readonly<Record<string, number>>;

export interface Expectation {
  readonly fault?: string;
  readonly command?: string;
  readonly fats?: Grams;
  /** Fats given by volume: within 6 %. */
  readonly fatsApprox?: Grams;
  readonly after?: Grams;
  readonly alkali?: Readonly<Record<string, number | { readonly grams: number; readonly purity?: number }>>;
  /** Of an alkali that is asked for. */
  readonly alkaliIds?: readonly string[];
  readonly waterGrams?: number | null;
  readonly liquidsGrams?: number;
  readonly superfat?: number;
  /** Acceptable only if the answer says so. */
  readonly warned?: string;
}

/** `silent`: answered what it had to ask, or answered something else; `needless`: asked what it could know. */
export type Outcome = 'right' | 'silent' | 'needless' | 'wrong-fault';

export const sets = [
  'chat',
  'prose',
  'tables',
  'traps',
  'hands',
  'market',
  'blind-7',
  'blind-8',
  'blind-9',
  'blind-10',
  'blind-11',
  'blind-12',
  'blind-13',
  'blind-14',
  'blind-15',
  'blind-16',
  'blind-17',
  'blind-18',
  'blind-19',
  'blind-20',
  'blind-21',
  'blind-22',
  'blind-23',
  'blind-24',
  'blind-25',
  'blind-26',
  'blind-27',
  'blind-28',
  'blind-29',
  'blind-30',
  'blind-31',
  'blind-32',
  'blind-33',
  'blind-34',
  'blind-35',
  'blind-36',
  'blind-37',
  'blind-39',
  'blind-42',
  'blind-43',
  'blind-44',
  'blind-45',
  'blind-46',
  'blind-47',
  'blind-48',
  'blind-49',
  'blind-50',
  'blind-51',
  'blind-52',
  'blind-53',
  'blind-54',
  'blind-55',
  'blind-56',
  'blind-57',
  'blind-58',
  'blind-59',
  'blind-60',
  'blind-61',
  'blind-62',
  'blind-63',
  'blind-64',
  'blind-65',
  'blind-66',
  'blind-67',
  'blind-68',
  'blind-69',
  'blind-71',
  'blind-72',
  'blind-73',
  'blind-74',
  'blind-75',
  'blind-76',
  'blind-77',
  'blind-79',
  'blind-80',
  'blind-82',
  'blind-95',
  'blind-97',
  'blind-99',
  'blind-100',
  'blind-103',
  'blind-104',
  'blind-105',
  'blind-106',
  'blind-107',
  'blind-108',
  'blind-109',
  'blind-110',
  'blind-111',
  'blind-112',
  'blind-113',
  'blind-114',
  'blind-115',
  'blind-116',
  'blind-117',
  'blind-118',
  'blind-119',
  'blind-120',
  'blind-121',
  'blind-122',
  'blind-123',
  'blind-124',
  'blind-125',
  'blind-126',
  'blind-127',
  'blind-128',
  'blind-129',
  'blind-130',
] as const;

export function posts(set: string): readonly Post[] {
  return JSON.parse(readFileSync(new URL(`${set}.json`, import.meta.url), 'utf8')) as Post[];
}

interface Result {
  readonly recipe?: {
    readonly fats: readonly { readonly id: string; readonly grams: number }[];
    readonly after: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number; readonly purity: number }[];
    readonly water: { readonly grams: number };
    readonly liquids: readonly { readonly grams: number }[];
  };
  readonly superfat?: { readonly nominal: number };
}

const near = (a: number, b: number, share: number): boolean => Math.abs(a - b) <= share * Math.max(Math.abs(b), 1);

function sameGrams(
  got: readonly { readonly id: string; readonly grams: number }[],
  want: Grams,
  share: number,
): boolean {
  const all = new Map(got.map(({ id, grams }) => [id, grams]));
  return (
    all.size === Object.keys(want).length &&
    Object.entries(want).every(([id, grams]) => near(all.get(id) ?? Number.NaN, grams, share))
  );
}

/** Grams and ounces of one amount differ by kitchen rounding: either may be taken. */
const rounding = 0.015;

function meets(expect: Expectation, command: string, result: Result, said: boolean): boolean {
  if (expect.fault) return false;
  if (expect.command !== undefined && expect.command !== command) return false;
  if (expect.command === 'safety') return true;
  if (expect.warned !== undefined && !said) return false;
  const { recipe } = result;
  if (!recipe) return false;
  if (expect.fats && !sameGrams(recipe.fats, expect.fats, rounding)) return false;
  if (expect.fatsApprox && !sameGrams(recipe.fats, expect.fatsApprox, 0.06)) return false;
  if (expect.after && !sameGrams(recipe.after, expect.after, rounding)) return false;
  if (expect.alkali && command === 'check') {
    if (recipe.alkali.length !== Object.keys(expect.alkali).length) return false;
    for (const [id, want] of Object.entries(expect.alkali)) {
      const got = recipe.alkali.find((one) => one.id === id);
      const grams = typeof want === 'number' ? want : want.grams;
      if (!got || !near(got.grams, grams, rounding)) return false;
      if (typeof want !== 'number' && want.purity !== undefined && !near(got.purity, want.purity, 0.002)) return false;
    }
  }
  if (expect.alkaliIds && recipe.alkali.map(({ id }) => id).join() !== expect.alkaliIds.join()) return false;
  if (expect.waterGrams != null && command === 'check' && !near(recipe.water.grams, expect.waterGrams, 0.02))
    return false;
  const liquids = recipe.liquids.reduce((sum, one) => sum + one.grams, 0);
  if (expect.liquidsGrams !== undefined && !near(liquids, expect.liquidsGrams, 0.06)) return false;
  // `lye` weighs down to the scale's step: the superfat comes out a little above the one asked for
  if (expect.superfat !== undefined && command === 'lye') {
    const nominal = result.superfat?.nominal ?? Number.NaN;
    if (!(nominal > expect.superfat - 0.0005 && nominal < expect.superfat + 0.03)) return false;
  }
  return true;
}

export async function score(bot: Bot, post: Post): Promise<{ readonly outcome: Outcome; readonly got: string }> {
  const reply = await bot.ask({ platform: 'test', place: post.id, person: post.id, text: post.text });
  const options = 'anyOf' in post.expect ? post.expect.anyOf : [post.expect];
  const faults = options.flatMap((one) => (one.fault ? [one.fault] : []));
  if (!reply.ok) {
    const got = `${reply.fault.code}: ${reply.fault.message}`;
    if (faults.includes(reply.fault.code)) return { outcome: 'right', got };
    return { outcome: faults.length > 0 ? 'wrong-fault' : 'needless', got };
  }
  const { command, result, assumptions, warnings } = reply.answer;
  const got = `${command}: ${JSON.stringify((result as Result).recipe ?? {}).slice(0, 400)}`;
  const right = options.some((one) => meets(one, command, result as Result, assumptions.length + warnings.length > 0));
  return { outcome: right ? 'right' : 'silent', got };
}
