/** "The rest is olive": a fat that fills a stated total, or a hundred per cent, up. */
import { withUnit } from '../columns/columns.ts';
import type { Roles } from '../recipe/roles.ts';
import { type Assembly, label, type Row, roundTo, unitFor } from '../recipe/rows.ts';
import type { Quantity } from '../words/quantities.ts';
import { plainQuantity } from '../words/quantities.ts';
import { isMark } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { fillerAt } from './filled-up.ts';
import type { Item } from './items.ts';

type Thing = Extract<Item, { kind: 'thing' }>;

const wordAt = (token: Token | undefined): string =>
  token?.t === 'word'
    ? token.text
    : token?.t === 'name' && token.meaning.kind === 'role'
      ? token.text.toLowerCase()
      : '';

const isRestWord = (word: string): boolean => word !== '' && /^(the )?(rest|remainder|remaining|balance)$/.test(word);
/** "The rest", "everything else". */
const tellsRest = (tokens: readonly Token[], k: number): boolean =>
  isRestWord(wordAt(tokens[k])) ||
  [k, k + 1].some((at) => wordAt(tokens[at]) === 'else' && /^(everything|all)$/.test(wordAt(tokens[at - 1])));
/** May stand between the fat and the word. */
const light: ReadonlySet<string> = new Set(
  'is are was will be being goes the of it in as with made make makes up by all just then for my from oil oils fat fats and'.split(
    ' ',
  ),
);
/** "top up with olive", "olive to make up the kilo". */
const filling = /^(top|topped|topping|fill|filled|make|made|bring)$/;
/** Words between, at the most. */
const farthest = 5;

/** Whether the words beside a fat say that it is the rest; they end where a figure, another name or a sentence does. */
function isRest(tokens: readonly Token[], { from, to }: Thing): boolean {
  let up = false;
  for (let k = from - 1; from - k <= farthest; k--) {
    const word = wordAt(tokens[k]);
    if (tellsRest(tokens, k) || (up && filling.test(word))) return true;
    up ||= word === 'up';
    if (!light.has(word) && !(tokens[k]?.t === 'sign' && /^[:=-]$/.test((tokens[k] as { text: string }).text))) break;
  }
  for (let k = to; k - to < farthest; k++) {
    const word = wordAt(tokens[k]);
    if (tellsRest(tokens, k)) return true;
    if (!light.has(word) && !isMark(tokens[k], '\t:=-')) break;
  }
  return false;
}

/** "The rest up to 100": the hundred per cent that it fills up are no amount of it. */
export function upToWhole(tokens: readonly Token[]): readonly Token[] {
  const isWhole = (token: Token): token is Figure =>
    token.t === 'quantity' &&
    ((token.quantity.dim === 'percent' && token.quantity.value === 1) ||
      (token.quantity.dim === 'bare' && token.quantity.value === 100));
  const isRestTo = (k: number): boolean =>
    wordAt(tokens[k - 1]) === 'to' && [k - 2, k - 3].some((at) => isRestWord(wordAt(tokens[at])));
  if (!tokens.some((token, k) => isWhole(token) && isRestTo(k))) return tokens;
  return tokens.map((token, k) => (isWhole(token) && isRestTo(k) ? asAside(token, 'all of the fats') : token));
}

/** "Coconut 150 g, rest olive 500 g total": the weight between such a fat and the word is that of all. */
export function totalBehindRest(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((item, k) => {
    const [fat, total] = [items[k - 1], items[k + 1]];
    if (item.kind !== 'amount' || fat?.kind !== 'thing' || total?.kind !== 'thing') return false;
    if (fat.named.meaning.kind !== 'fat' || !/^total/.test(total.named.meaning.id)) return false;
    return item.from === fat.to && total.from <= item.to + 1 && isRest(tokens, fat);
  });
  const found = items[at];
  return found?.kind === 'amount' ? items.with(at, { ...found, total: true }) : items;
}

const massOf = (assembly: Assembly, { amount, token }: Row): number | null => {
  if (amount?.dim === 'mass') return amount.upTo === null ? amount.value : null;
  const unit = amount?.dim === 'bare' ? unitFor(assembly, token)?.unit : undefined;
  return amount && unit ? withUnit(amount, unit).value : null;
};

/** The rows with that of the fat which is the rest, where one is and what it leaves can be known. */
export function withRest(assembly: Assembly, rows: readonly Row[], roles: Roles): readonly Row[] {
  const { items, tokens, bound } = assembly.source;
  const rest: Thing[] = [];
  const fillers = new Set(
    items.map((item) => (item.kind === 'amount' && item.total ? fillerAt(tokens, item.from) : -1)),
  );
  const fills = ({ from, to }: Thing): boolean => [...fillers].some((at) => at >= from && at < to);
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind === 'thing' && item.named.meaning.kind === 'fat' && (isRest(tokens, item) || fills(item)))
      rest.push(item);
  }
  const [fat] = rest;
  if (!fat) return rows;
  const others = rows.filter((row) => row.named.meaning.kind === 'fat' && !row.after);
  if (rest.length > 1 || others.some(({ named }) => named.meaning.id === fat.named.meaning.id)) return rows;
  const quantity = others.every(({ share, amount }) => share && !amount)
    ? shareLeft(others)
    : weightLeft(assembly, others, roles);
  if (!quantity) {
    assembly.doubts.push({ id: 'no-amount', said: fat.named.text, of: label(assembly, fat.named.meaning) });
    return rows;
  }
  const own = quantity.dim === 'percent' ? { amount: null, share: quantity } : { amount: quantity, share: null };
  const of = label(assembly, fat.named.meaning);
  assembly.assume('shares', `I took the rest as ${of}: ${quantity.text}.`);
  const line = assembly.lineOf(fat.from);
  const row: Row = {
    ...{ named: fat.named, token: fat.from, line, same: null, grams: null, said: quantity.text },
    ...{ after: false, each: false },
    ...own,
  };
  return [...rows, row];
}

function shareLeft(others: readonly Row[]): Quantity | null {
  const left = 1 - others.reduce((sum, { share }) => sum + (share?.value ?? 0), 0);
  if (others.length === 0 || !(left > 0.005)) return null;
  return { ...plainQuantity, dim: 'percent', value: left, text: `${roundTo(left * 100, 1)} %` };
}

function weightLeft(assembly: Assembly, others: readonly Row[], roles: Roles): Quantity | null {
  const loose = roles.totals.find(({ solution }) => !solution);
  const total = roles.totalFats?.value ?? loose?.grams;
  const masses = others.map((row) => massOf(assembly, row));
  if (total === undefined || masses.length === 0 || masses.some((mass) => mass === null)) return null;
  const left = total - masses.reduce<number>((sum, mass) => sum + (mass ?? 0), 0);
  if (!(left > 0.005 * total)) return null;
  // "900 g oils: coconut 20, shea 10, olive the rest": of a hundred, as likely
  const isBare = others.every(({ amount }) => amount?.dim === 'bare');
  const bare = others.reduce((sum, { amount }) => sum + (amount?.value ?? 0), 0);
  if (isBare && bare < 100 && left > total / 2) return null;
  if (!roles.totalFats && loose)
    assembly.assume('shares', `I took ${loose.quantity.text} as the weight of all the fats.`);
  const unit = roles.totalFats?.unit ?? loose?.quantity.unit ?? null;
  const pounds = unit?.id === 'oz' || unit?.id === 'lb';
  const said = pounds ? `${roundTo(left / unit.factor, 2)} ${unit.id}` : `${roundTo(left, 1)} g`;
  return { ...plainQuantity, dim: 'mass', value: left, unit, text: said };
}
