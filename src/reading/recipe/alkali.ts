import type { AlkaliId } from '../../catalogue/types.ts';
import type { Purity, RecipeReading } from '../reading.ts';
import { type Item, sameWithin } from '../rows/items.ts';
import type { Quantity } from '../words/quantities.ts';
import { isMark, isStop, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { isAdded, isOther } from './added.ts';
import { isForLater } from './missing.ts';
import { askOfMixture } from './mixed-alkali.ts';
import { asPurity, type Roles } from './roles.ts';
import { type Assembly, type Row, roundTo, sameAmount } from './rows.ts';

/** Share of alkali in the thinnest lye solution that a post may mean. */
const thinnest = 0.12;

/** Pure alkali to what the fats need, as people weigh it. */
const likely = { least: 0.7, most: 1.1 };

/** Dry alkali to what the fats need, beyond which a lye that was mixed before is weighed wet. */
const mostDry = 1.3;
const mixedBefore =
  /\b(?:pre-?mixed|ready[- ]?(?:mixed|made)|already (?:mixed|dissolved|made up)|mixed up|liquid lye)\b/i;

const wholly: Purity = { nominal: 1, low: 1, high: 1 };

/** Alkali that a row weighs, dry or in a solution with so much water. */
interface Found {
  readonly id: AlkaliId;
  readonly grams: number;
  readonly purity: Purity | null;
  readonly stock: boolean;
  readonly row: Row;
  readonly water: number;
}

/** More than the whole: no purity and no strength. */
export const beyondWhole = (value: number): boolean => value > 1.0051;

/** What the rows say of the strength of a solution and of its water, and whether one alkali alone is weighed. */
function besideOf(rows: readonly Row[]): { stockShare: number | null; waterSaid: number; isAlone: boolean } {
  let ofStock: number | null = null;
  let ofAlkali: number | null = null;
  let [waterSaid, weighed] = [0, 0];
  for (const { named, grams, share, amount } of rows) {
    const { kind } = named.meaning;
    if (kind === 'water' || kind === 'liquid') waterSaid += grams ?? 0;
    else if (kind === 'stock') ofStock ??= share?.value ?? null;
    else if (kind === 'alkali' && share && !amount && share.value <= 0.55) ofAlkali ??= share.value;
    if ((kind === 'alkali' || kind === 'stock') && grams !== null) weighed++;
  }
  return { stockShare: ofStock ?? ofAlkali, waterSaid, isAlone: weighed === 1 };
}

const isWeighedLye = ({ named, grams }: Row): boolean =>
  (named.meaning.kind === 'alkali' || named.meaning.kind === 'stock') && grams !== null;

/** Words before an alkali that is not the one asked for: "not NaOH", "instead of NaOH"; "I've only ever used NaOH". */
const denying = /^(?:not|no|never|instead|rather|than|unlike|without)$/;
const habitual = /^(?:always|usually|normally|ever|used|before|previously)$/;
const reach = 10;

function spokenOf(tokens: readonly Token[], { from }: Item): 'denied' | 'habit' | null {
  let told: 'habit' | null = null;
  for (let k = from - 1; k >= 0 && from - k <= reach && !isStop(tokens[k]); k--) {
    const token = tokens[k];
    if (token?.t === 'name' && (token.meaning.kind === 'alkali' || token.meaning.kind === 'stock')) break;
    // "no free fat, how much NaOH": something else is denied
    if (isMark(token, ',') && tokens[k - 1]?.t === 'name') break;
    const word = token && 'text' in token ? token.text.toLowerCase() : '';
    if (denying.test(word)) return 'denied';
    // "whatever the others say about KOH"
    if (habitual.test(word) || (saying.test(word) && !mine.test(spoken(tokens[k - 1])))) told = 'habit';
  }
  return told === 'habit' && staysSo(tokens, from) ? null : told;
}

const saying = /^(?:say|says|said|tell|talk|swear|swears|think|thinks|preach|recommend|recommends)$/;
const mine = /^(?:i|we|id|i'd|would|must|to)$/;

/** "Normally I'd go all NaOH and that is still the plan". */
function staysSo(tokens: readonly Token[], from: number): boolean {
  let stays = false;
  for (let k = from + 1; k - from <= reach && !isStop(tokens[k]) && !isMark(tokens[k], ','); k++) {
    const word = wordAt(tokens, k);
    if (/^(?:but|however|though|not|never)$/.test(word)) return false;
    stays ||= word === 'still';
  }
  return stays;
}

const softSoap =
  /\b(liquid|soft|black) soap|(?<![\p{L}\d] )\bcream soap(?![\s\S]*\b(?:bars?|slab|loaf|squares|sliced?)\b)|soap paste|schmierseife|savon noir|flussigseife|flüssigseife/iu;

export function readAlkali(
  assembly: Assembly,
  rows: readonly Row[],
  roles: Roles,
  demand: (id: AlkaliId) => number,
): { alkali: RecipeReading['alkali']; stockWater: number; named: AlkaliId[]; split: [number, number] | null } {
  const { text, lexicon, items, tokens } = assembly.source;
  const found: Found[] = [];
  const mentioned = new Set<AlkaliId>();
  const merely = new Set<AlkaliId>();
  const denied = new Set<AlkaliId>();
  const { stockShare, waterSaid, isAlone } = besideOf(rows);
  for (const item of items)
    if (
      item.kind === 'thing' &&
      (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock') &&
      item.named.meaning.id !== 'unsaid' &&
      // "Someday I want to try KOH"
      !isForLater(tokens, item, !rows.some(isUnsaidLye))
    ) {
      const { id } = item.named.meaning;
      const spoken = spokenOf(tokens, item);
      (spoken === null ? mentioned : merely).add(id);
      if (spoken === 'denied') denied.add(id);
    }
  // where one alone is asked for, the other is spoken of; "I've never used KOH. How much lye?" asks for either
  const isWeighed = rows.some(isWeighedLye);
  if (!isWeighed && mentioned.size === 0 && denied.size > 0 && assembly.asksForAlkali())
    assembly.doubts.push({ id: 'which-alkali', said: 'lye' });
  if (mentioned.size !== 1 || isWeighed) for (const id of merely) mentioned.add(id);
  else if (!merely.isSubsetOf(mentioned))
    assembly.assume(
      'lye',
      `I took ${lexicon.label({ kind: 'alkali', id: [...mentioned][0] ?? 'naoh' })}: the other alkali is only spoken of.`,
    );
  /** "lye 23 g, KOH 62 g": two alkalis, of which the one by its bare name is sodium hydroxide. */
  const besideKoh = (row: Row): boolean =>
    row.grams !== null &&
    rows.some(
      ({ named, grams }) =>
        named.meaning.kind === 'alkali' &&
        named.meaning.id === 'koh' &&
        grams !== null &&
        Math.abs(grams - (row.grams ?? 0)) > sameWithin * grams,
    );
  let soft: boolean | null = null;
  const idOf = (row: Row): AlkaliId | null => {
    const { meaning } = row.named;
    if (meaning.kind !== 'alkali' && meaning.kind !== 'stock') return null;
    if (meaning.id !== 'unsaid') return meaning.id;
    if (mentioned.size === 1 && !besideKoh(row)) return [...mentioned][0] ?? null;
    soft ??= softSoap.test(text);
    if (mentioned.size === 2 || soft) {
      assembly.doubts.push({ id: 'which-alkali', said: row.named.text });
      return null;
    }
    assembly.assume('lye', 'I took "lye" as sodium hydroxide (NaOH).');
    return 'naoh';
  };
  const stockNamed = items.some((item) => item.kind === 'thing' && item.named.meaning.kind === 'stock');
  /** "lye 102 g (33 %)": the strength that this alkali and the water of the post make, or no water is said. */
  const agrees = (grams: number, share: number): boolean =>
    waterSaid > 0 && Math.abs(grams / (grams + waterSaid) - share) < 0.03;
  /** Whether the fats need about as much alkali as this is, where nothing else is weighed for it. */
  const suits = (id: AlkaliId, grams: number): boolean =>
    isAlone && grams > likely.least * demand(id) && grams < likely.most * demand(id);
  const inSolution = (id: AlkaliId, grams: number, strength: number, row: Row): void => {
    found.push({ id, grams: grams * strength, purity: wholly, stock: true, row, water: grams * (1 - strength) });
  };
  const isMixed = (): boolean => (stockNamed && stockShare === null) || mixedBefore.test(text);
  let split: [number, number] | null = null;
  const shareRows: Row[] = [];
  for (const row of rows) {
    const { meaning } = row.named;
    if (meaning.kind !== 'alkali' && meaning.kind !== 'stock') continue;
    const grams = row.grams;
    if (grams === null) {
      if (row.share && !row.amount) shareRows.push(row);
      continue;
    }
    const id = idOf(row);
    if (!id) continue;
    const percent = row.share;
    if (percent && beyondWhole(percent.value)) {
      assembly.doubts.unshift({ id: meaning.kind === 'stock' ? 'strength-odd' : 'purity-odd', said: percent.text });
      continue;
    }
    if (meaning.kind === 'stock') {
      const strength = percent?.value ?? stockShare ?? roles.concentration;
      if (strength === null) {
        // the weight of the alkali and water that stand beside it is a total, not another amount
        roles.totals.push({ quantity: row.amount as Quantity, grams, strict: false, solution: true });
        if (!rows.some((other) => other !== row && other.named.meaning.kind === 'alkali' && other.grams !== null))
          assembly.doubts.push({ id: 'stock-strength', said: `${row.said} ${row.named.text}` });
        continue;
      }
      if (!(strength > 0.02 && strength < 0.75)) {
        assembly.doubts.push({
          id: 'alkali-percent',
          said: percent?.text ?? '',
          of: lexicon.label({ kind: 'alkali', id }),
        });
        continue;
      }
      inSolution(id, grams, strength, row);
      continue;
    }
    let purity: Purity | null = null;
    // "Lye solution: 32 % NaOH 300 g": no water beside it
    // "280 g of that lye", beside more water, is no alkali by its weight
    const isNoAlkali = waterSaid === 0 || !(suits(id, grams) || (stockShare !== null && agrees(grams, stockShare)));
    const strength = percent?.value ?? roles.concentration ?? (isNoAlkali ? stockShare : null);
    if (strength !== null && strength > thinnest && strength <= 0.55 && suits(id, grams * strength)) {
      const pure = roundTo(grams * strength, 1);
      assembly.assume('purity', `I took the ${row.said} as a lye solution that holds ${pure} g.`);
      inSolution(id, grams, strength, row);
      continue;
    }
    if (percent) {
      const least = Math.min(percent.value, percent.upTo ?? percent.value);
      if (least >= 0.7 && (percent.upTo ?? percent.value) <= 1.0051) purity = asPurity(percent);
      else if (percent.value <= thinnest) {
        // "112 g NaOH, 5 %": no purity and no solution that anybody has
        if (roles.superfat === null) assembly.assume('shares', `I took "${percent.text}" as the superfat.`);
        else assembly.assume('left-out', `I left out "${percent.text}".`, { said: percent.text });
        roles.superfat ??= percent.value;
      } else if (percent.value <= 0.55 && meaning.id === 'unsaid' && roles.concentration === null)
        roles.concentration = percent.value;
      else if (percent.value <= 0.55 && stockNamed) {
        inSolution(id, grams, percent.value, row);
        continue;
      } else if (percent.value <= 0.55 && agrees(grams, percent.value)) roles.concentration ??= percent.value;
      else
        assembly.doubts.push({ id: 'alkali-percent', said: percent.text, of: lexicon.label({ kind: 'alkali', id }) });
    }
    // "400 g lye (the premixed stuff)": too much for these fats, unless it is water for the most part
    if (!percent && strength === null && waterSaid === 0 && isAlone && grams > mostDry * demand(id) && isMixed()) {
      assembly.doubts.push({ id: 'stock-strength', said: `${row.said} ${row.named.text}` });
      continue;
    }
    // "139 g NaOH as a 33 % solution": a third of it would be too little
    if (strength !== null && strength > thinnest && strength <= 0.55 && waterSaid === 0 && /\bsolution\b/i.test(text))
      assembly.assume('purity', `I took the ${row.said} as dry alkali, before it is dissolved.`);
    found.push({ id, grams, purity, stock: false, row, water: 0 });
  }
  if (found.length === 1) askOfMixture(assembly);
  const pair = splitOf(shareRows);
  if (pair) split = pair.shares;
  for (const row of shareRows) {
    const { meaning } = row.named;
    if (pair?.rows.includes(row)) continue;
    const value = row.share?.value ?? 0;
    if (beyondWhole(value))
      assembly.doubts.unshift({
        id: meaning.kind === 'stock' ? 'strength-odd' : 'purity-odd',
        said: row.share?.text ?? '',
      });
    else if (value >= 0.7 && value <= 1.0051) {
      const pure = shareRows.filter(({ share }) => (share?.value ?? 0) >= 0.7);
      const said = asPurity(row.share as Quantity);
      const other = roles.purity ?? said;
      if (pure.every(({ share }) => !isBeyond(other, share?.value ?? 0))) roles.purity ??= said;
      // "98 % NaOH, so 95 % pure": of one alkali
      else if (
        row === pure[0] &&
        new Set(pure.map(({ named }) => named.meaning.id).filter((id) => id !== 'unsaid')).size < 2 &&
        !isOfOtherTub(assembly, row)
      )
        assembly.doubts.push({
          id: 'two-amounts',
          of: 'purity',
          said: [...pure.map(({ share }) => share?.text ?? ''), percentOf(other.nominal)],
        });
    } else if (value <= 0.55 && shareRows.filter((other) => (other.share?.value ?? 1) <= 0.55).length === 1) {
      // "lye at 5 %": a lye solution as thin as that is nobody's; the superfat is meant
      if (value > thinnest || meaning.kind === 'stock') roles.concentration ??= value;
      else if (roles.superfat === null) {
        roles.superfat = value;
        assembly.assume('shares', `I took "${row.share?.text ?? ''}" as the superfat.`);
      }
    }
    // "whatever they say about KOH. 5 %": the share is of no alkali that is only spoken of
    if (meaning.kind !== 'alkali' && meaning.kind !== 'stock') continue;
    if (meaning.id !== 'unsaid' && !(merely.has(meaning.id) && mentioned.size > 0)) mentioned.add(meaning.id);
  }
  const alkali = besideSolution(assembly, found, demand);
  // one alkali with two amounts
  const out: { id: AlkaliId; grams: number; purity: Purity | null; stock: boolean }[] = [];
  let stockWater = alkali.reduce((sum, one) => sum + one.water, 0);
  for (const id of ['naoh', 'koh'] as const) {
    const list = alkali.filter((one) => one.id === id);
    const [first] = list;
    if (!first) continue;
    const [, second] = list;
    const isMoreOfIt =
      second &&
      list.length === 2 &&
      !list.some(({ stock }) => stock) &&
      isAdded(tokens, second.row, first.row) &&
      first.grams + second.grams < mostAdded * demand(id);
    if (isMoreOfIt)
      assembly.assume(
        'corrected',
        `I took ${first.row.said} and ${second.row.said} of ${lexicon.label({ kind: 'alkali', id })} together, as one was added to the other.`,
      );
    else if (list.length > 1) {
      const equal = list.every((one) => sameAmount(one.row, first.row) && one.stock === first.stock);
      const isMore = list.slice(1).some(({ row }) => isOther(tokens, row));
      if (
        equal &&
        !isMore &&
        list.some((one) => one.row.line !== first.row.line || Math.abs(one.row.token - first.row.token) > 6)
      ) {
        // a solution that stands twice has its water once, too
        stockWater -= (list.length - 1) * first.water;
        assembly.assume(
          'repeated',
          `${lexicon.label({ kind: 'alkali', id })} stands ${list.length} times with one amount; I took it once.`,
        );
      } else
        assembly.doubts.push({
          id: 'two-amounts',
          of: lexicon.label({ kind: 'alkali', id }),
          said: list.map((one) => one.row.said),
        });
    }
    const purity = list.find((one) => one.purity)?.purity ?? null;
    // "her KOH is 85 % and she used 150 g. My bag says 90 % and I took 175 g": of what was taken back the purity may be, too
    const isRetold = assembly.source.back.some(({ gone }) => gone.some(({ dim }) => dim === 'mass'));
    if (isRetold && purity && roles.purity && isBeyond(roles.purity, purity.nominal))
      assembly.doubts.push({
        id: 'two-amounts',
        of: 'purity',
        said: [percentOf(purity.nominal), percentOf(roles.purity.nominal)],
      });
    out.push({
      id,
      grams: isMoreOfIt ? first.grams + second.grams : first.grams,
      purity: purity ?? (alkali.every((one) => one.id === id) && !first.stock ? roles.purity : null),
      stock: first.stock,
    });
  }
  const kept = inStore(assembly, alkali, demand);
  if (kept) return { alkali: [], stockWater: 0, named: [...new Set([...mentioned, kept])], split };
  return { alkali: out, stockWater, named: [...mentioned], split };
}

/** What two lots of alkali are together, to what the fats need: more than that is asked about. */
const mostAdded = 1.1;

/** Where alkali is kept, or said to be had. */
const keeping =
  /\b(?:drums?|sacks?|bags?|buckets?|barrels?|tubs?|cans?|tins?|jars?|packs?|packets?|bottles?|shed|barn|cellar|garage|home|house|cupboard|shop|store|stock|have|ive|weve|got|bought|ordered|holds|unopened|sealed|shortage|plenty)\b/;
/** It is in the pot, or is to be. */
const putIn = /\b(?:put|poured|tipped|stirred|added|used|weighed|dissolved|mixed|went|goes)\b/;
/** Alkali to what the fats need, beyond which it is no batch's. */
const mostMeant = 3;
const longestLook = 24;

/** "We have a 25 kg drum of NaOH. How much for one batch?": what is in store, where that is asked; which alkali. */
function inStore(assembly: Assembly, alkali: readonly Found[], demand: (id: AlkaliId) => number): AlkaliId | null {
  const [only, ...more] = alkali;
  if (!only || more.length > 0 || only.stock || only.grams <= mostMeant * demand(only.id)) return null;
  if (demand(only.id) <= 0 || !assembly.asksForAlkali()) return null;
  const { tokens } = assembly.source;
  const { from, to } = sentenceAt(tokens, only.row.token, longestLook);
  const words = tokens.slice(from, to).map(spoken).join(' ');
  if (!keeping.test(words) || putIn.test(words)) return null;
  assembly.assume('left-out', `I left out "${only.row.said}": it is what is in store, and no batch's.`);
  return only.id;
}

/**
 * "340 g of the 50 % stock, that is 170 g of lye": said twice; "300 g of the solution, not 300 g of lye", "10 kg of 50 %
 * lye; I took 220 g of it": what the fats cannot take goes; "138 g lye, water to make it a 30 % solution, 322 g": the
 * weight is the water's.
 */
function besideSolution(
  assembly: Assembly,
  found: readonly Found[],
  demand: (id: AlkaliId) => number,
): readonly Found[] {
  const solutions = found.filter(({ stock }) => stock);
  if (solutions.length === 0) return found;
  const need = demand(solutions[0]?.id ?? 'naoh');
  const suits = (grams: number): boolean => grams > likely.least * need && grams < likely.most * need;
  const fitting = solutions.filter(({ grams }) => suits(grams));
  const [solution = solutions[0]] = fitting;
  if (!solution || (solutions.length > 1 && fitting.length !== 1)) return found;
  const leaveOut = ({ row }: Found): void =>
    assembly.assume(
      'left-out',
      `I left out "${row.said} ${row.named.text}" and took ${solution.row.said} of the solution.`,
    );
  const alkali = found.filter((one) => !one.stock || one === solution);
  for (const one of solutions) if (one !== solution) leaveOut(one);
  const whole = solution.grams + solution.water;
  const dry = alkali.filter(({ stock, id }) => !stock && id === solution.id);
  const [only] = dry;
  const made = only && dry.length === 1 && !suits(solution.grams);
  if (made && Math.abs(only.grams / (only.grams + whole) - solution.grams / whole) < 0.005)
    return alkali.flatMap((one) => (one === solution ? [] : one === only ? [{ ...only, water: whole }] : [one]));
  return alkali.filter((one) => {
    if (!dry.includes(one)) return true;
    const { grams } = one;
    if (Math.abs(grams - solution.grams) <= sameWithin * solution.grams) return false;
    if (!suits(solution.grams) || suits(grams) || suits(grams + solution.grams)) return true;
    leaveOut(one);
    return false;
  });
}

const labelWord =
  /^(flakes?|pellets?|beads|crystals|granules|prills|bag|jar|bottle|box|label|labell?ed|tin|sheet|packet|pack|drum|minimum|min|strength|assay|grade|says?|said|reads|container|can|canister|tub|printed|supplier|stuff|mine|sold|new|analysis|certificate|sack|gives|states|lot)$/;
const leastLabelled = 0.8;

const isShare = (item: Item | undefined): item is Extract<Item, { kind: 'amount' }> =>
  item?.kind === 'amount' && item.quantity.dim === 'percent';

const isBeyond = ({ low, high }: Purity, value: number): boolean => value < low - 0.0051 || value > high + 0.0051;

const percentOf = (share: number): string => `${roundTo(share * 100, 2)} %`;

/** "The old tub was 90 %". */
function isOfOtherTub({ source: { tokens } }: Assembly, { token }: Row): boolean {
  const { from, to } = sentenceAt(tokens, token, 20);
  return tokens.slice(from, to).some((one) => /^(?:old|new|other|last|was|had|before|used)$/.test(spoken(one)));
}

const isAlkali = (item: Item): boolean =>
  item.kind === 'thing' && (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock');

const isUnsaidLye = ({ named: { meaning }, grams }: Row): boolean =>
  meaning.kind === 'alkali' && meaning.id === 'unsaid' && grams !== null;

/** "my flakes say 85 %": a share that no name takes, as a label has it, beside a named alkali. */
export function loosePurity(assembly: Assembly, roles: Roles): void {
  const { items, tokens, bound } = assembly.source;
  if (roles.purity !== null) return;
  const shares = bound.best.orphans.map((k) => items[k]).filter(isShare);
  if (shares.length === 0 || !items.some(isAlkali)) return;
  for (const { quantity, from, to } of shares) {
    const around = [...tokens.slice(Math.max(0, from - 4), from), ...tokens.slice(to, to + 3)];
    const isNamed = around.some(
      (one) => one.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'purity',
    );
    if (quantity.value < leastLabelled || (beyondWhole(quantity.upTo ?? quantity.value) && !isNamed)) continue;
    if (
      !isNamed &&
      !around.some((one) => (one.t === 'word' || one.t === 'name') && labelWord.test(one.text.toLowerCase()))
    )
      continue;
    roles.purity = asPurity(quantity);
    assembly.assume('purity', `I took "${quantity.text}" as the purity of the alkali.`);
    assembly.fate(quantity, 'used', 'purity');
    return;
  }
}

/** "60 % KOH, 40 % NaOH": two shares that make the whole, beside which a purity may stand. */
function splitOf(rows: readonly Row[]): { readonly rows: readonly Row[]; readonly shares: [number, number] } | null {
  const of = (id: AlkaliId): readonly Row[] => rows.filter((row) => row.named.meaning.id === id);
  for (const naoh of of('naoh'))
    for (const koh of of('koh')) {
      const shares: [number, number] = [naoh.share?.value ?? 0, koh.share?.value ?? 0];
      if (Math.abs(shares[0] + shares[1] - 1) < 0.011) return { rows: [naoh, koh], shares };
    }
  return null;
}
