/**
 * What others took or say of the lye, each with a figure, beside what the writer took: "the book says 134, my gf says
 * 127, I put in 130 g lye". Only the writer's counts.
 */
import { type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { endsDotted, isIngredient, isMark, isStop, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

const amount = '(?: (?:about|only|just|around|roughly|exactly|like|in|out|up|with|for|at|on|by|all|the|middle))*';
const deeds: ReadonlySet<string> = new Set(
  'using putting taking going used use uses put puts took take takes did does had has went ended weighed poured say says said think thinks thought reckon reckons reckoned want wants wanted give gives gave recommend recommends recommended claim claims swears got chose decided settled picked stopped stuck stayed'.split(
    ' ',
  ),
);
let made: RegExp | null = null;
const claim = (): RegExp => {
  made ??= new RegExp(`^(?:(?:and|but|so|while|whereas|then) )*(?<who>.+?) (?:${[...deeds].join('|')})${amount}$`, 'u');
  return made;
};
const me =
  /^(?:me )?(?:i|we|ive|i['’]ve|weve|we['’]ve|im|i['’]m|were|we['’]re)(?: (?:am|are))?(?: (?:have|had|then|just|only|actually|really|finally|now|myself))*(?: got [a-z]+ and)?$/;
/** Somebody, or a book. */
const somebody =
  /^(?:(?:the|my|our|her|his|their|this|that|an?|one) )?(?!.*\b(?:i|we|you|it|would|could|should|might|maybe|not|never|if|which|who)\b|.+ (?<!\b(?:on|at|in|from|of|by) )(?:the|my|our|her|his|their|an?)\b)\p{L}[\p{L}'’]*(?: \p{L}[\p{L}'’]*){0,5}$/u;

interface Claim {
  /** From the first word to behind the last one. */
  readonly from: number;
  readonly to: number;
  readonly figure: number;
  /** The lye, named beside it. */
  readonly name: number | null;
  readonly who: string;
  readonly isMine: boolean;
}

/** Words ahead of a figure that tell whose it is, at the most. */
const mostWords = 8;

const isLye = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  isIngredient(token) && token.meaning.kind === 'alkali';

const isPlain = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' &&
  (token.quantity.dim === 'mass' || token.quantity.dim === 'bare') &&
  token.quantity.upTo === null &&
  !token.quantity.negative &&
  !token.quantity.each;

/** What somebody is called may look like an abbreviation of a fat: "jo". */
const wordOf = (token: Token | undefined): string => {
  if (token?.t !== 'name') return spoken(token);
  return token.meaning.kind === 'role' || token.how === 'abbreviation' || token.how === 'spelling' || isPerson(token)
    ? token.text.toLowerCase()
    : '';
};
const isPerson = (token: Extract<Token, { t: 'name' }>): boolean => token.meaning.kind === 'unknown';

function claimAt(tokens: readonly Token[], k: number): Claim | null {
  if (!isPlain(tokens[k])) return null;
  let from = k;
  while (from > 0 && k - from < mostWords && wordOf(tokens[from - 1]) !== '') from--;
  const words = tokens.slice(from, k).map(wordOf);
  const said = words.some((word) => deeds.has(word)) ? claim().exec(words.join(' ')) : null;
  const who = said?.groups?.['who'];
  if (who === undefined) return null;
  const at = wordOf(tokens[k + 1]) === 'of' ? k + 2 : k + 1;
  const name = isLye(tokens[at]) ? at : null;
  if (name === null && isIngredient(tokens[at])) return null;
  const isMine = me.test(who);
  return isMine || somebody.test(who) ? { from, to: (name ?? k) + 1, figure: k, name, who, isMine } : null;
}

/** Claims that follow each other, no more than a sign between them. */
function* rowsOf(tokens: readonly Token[]): Generator<readonly Claim[]> {
  let row: Claim[] = [];
  for (let k = 0; k < tokens.length; k++) {
    const one = claimAt(tokens, k);
    if (!one) continue;
    const last = row.at(-1);
    const isNext =
      last !== undefined &&
      tokens.slice(last.to, one.from).every((token) => isMark(token, ',;.&-–—') || isOfSame(token));
    if (last && !isNext) {
      yield row;
      row = [];
    }
    row.push(one);
  }
  if (row.length > 0) yield row;
}

/** "Of lye for this", "for the same oils": behind what they say of it. */
const isOfSame = (token: Token): boolean =>
  /^(?:for|this|it|these|those|oils?|fats?|same|the|them)$/.test(wordOf(token));

/** Weights of one thing in one batch are no further apart. */
const mostApart = 1.6;

/** "Is Sam's ok", "check hers": somebody else's is asked about. */
function asksOfOthers(tokens: readonly Token[], row: readonly Claim[]): boolean {
  const called = new Set(row.flatMap(({ who, isMine }) => (isMine ? [] : [`${who.split(' ').at(-1)}s`])));
  return tokens.some((token, k) => {
    const word = wordOf(token).replace(/['’]/g, '');
    const isCalled = called.has(word) || /^(?:hers|his|theirs)$/.test(word);
    return isCalled && !/^(?:not|than|nor|from)$/.test(wordOf(tokens[k - 1]));
  });
}

/** "So I added 6 g more": a figure without a name in the sentence behind them. */
function goesOn(tokens: readonly Token[], from: number): boolean {
  for (let k = from; k < tokens.length && !isStop(tokens[k]) && !endsDotted(tokens[k - 1]); k++)
    if (isPlain(tokens[k]) && ![k - 1, k + 1].some((at) => isIngredient(tokens[at]))) return true;
  return false;
}

/** A lye that is weighed beside what is claimed of it. */
const isElsewhere = (tokens: readonly Token[], row: readonly Claim[]): boolean =>
  tokens.some(
    (token, k) =>
      isLye(token) &&
      !row.some(({ name }) => name === k) &&
      [k - 2, k - 1, k + 1].some((at) => isPlain(tokens[at]) && !row.some(({ figure }) => figure === at)),
  );

const ofFew = ({ quantity: a }: Figure, { quantity: b }: Figure): boolean =>
  a.dim !== b.dim || Math.max(a.value / b.value, b.value / a.value) <= mostApart;

/** Claims of no name, the writer's among them, of about as much as the lye that is weighed elsewhere, and not the same. */
function areOfWeighed(tokens: readonly Token[], row: readonly Claim[]): boolean {
  const mine = tokens[row.find(({ isMine }) => isMine)?.figure ?? -1];
  if (row.length < 2 || !isPlain(mine) || row.some(({ name }) => name !== null)) return false;
  const lyes = tokens.flatMap((token, k) => (isLye(token) ? [k - 2, k - 1, k + 1] : [])).map((at) => tokens[at]);
  const [lye] = lyes.filter(isPlain);
  const figures = row.map(({ figure }) => tokens[figure]).filter(isPlain);
  return lye !== undefined && figures.every((one) => ofFew(one, lye)) && mine.quantity.value !== lye.quantity.value;
}

/** What the claims of a row are about, where they are all about one lye. */
function lyeOf(tokens: readonly Token[], row: readonly Claim[]): Extract<Token, { t: 'name' }> | null {
  const named = row.map(({ name }) => tokens[name ?? -1]).filter(isLye);
  const [lye] = named;
  const figures = row.map(({ figure }) => tokens[figure]).filter(isPlain);
  const [first] = figures;
  const isOne = lye && first && named.every(({ meaning }) => meaning.id === lye.meaning.id);
  return isOne && figures.every((one) => ofFew(one, first)) && !isElsewhere(tokens, row) ? lye : null;
}

const saidBy = (tokens: readonly Token[], { from, to }: Claim): string =>
  tokens.slice(from, to).map(wordOf).join(' ').trim();

/** The tokens without what others say of the lye. */
export function rivals({ tokens }: Cut): {
  readonly tokens: readonly Token[];
  readonly told: readonly PutRight[];
  /** Words of a claim, where nobody knows whose counts. */
  readonly unheard: string | null;
} {
  let out: Token[] | null = null;
  let unheard: string | null = null;
  const told: PutRight[] = [];
  const rows = [...rowsOf(tokens)];
  const isClaimed = rows.some((row) => row.some(({ isMine, name }) => isMine && name === null));
  for (const row of rows) {
    const [mine, ...more] = row.filter(({ isMine }) => isMine);
    const others = row.filter(({ isMine }) => !isMine);
    const [other] = others;
    const [first, last] = [row[0], row.at(-1)];
    const lye = row.length > 1 ? lyeOf(tokens, row) : null;
    if (other && areOfWeighed(tokens, row)) unheard ??= saidBy(tokens, other);
    if (!first || !last || !lye || !other || more.length > 0 || (mine && goesOn(tokens, last.to))) continue;
    const figures = others.map(({ figure }) => tokens[figure]).filter(isPlain);
    const isNobodys =
      !mine && !isClaimed && figures.some(({ quantity }) => quantity.value !== figures[0]?.quantity.value);
    if (isNobodys || (mine && asksOfOthers(tokens, row))) unheard ??= saidBy(tokens, other);
    const [own, verb] = [tokens[mine?.figure ?? -1], tokens[(mine?.figure ?? 0) - 1]];
    // one other, the lye named beside both, is heard elsewhere
    const isRow = others.length > 1 || row.some(({ name }) => name === null);
    if (unheard !== null || !mine || !isPlain(own) || !verb || !isRow) continue;
    out ??= [...tokens];
    for (const { from, to } of others)
      for (let k = from; k < to; k++) {
        const token = tokens[k];
        if (token) out[k] = isPlain(token) ? asAside(token, 'what somebody else says') : asFiller(token);
      }
    if (mine.name === null) out[mine.figure - 1] = { ...lye, from: verb.from, to: verb.to };
    const said = figures.map(({ quantity }) => written(quantity)).join(' or ');
    told.push({
      text: `I took ${written(own.quantity)} of the lye, not ${said}, which others take or say.`,
      gone: figures.map(({ quantity }) => quantity),
      from: first.from,
      to: last.to,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told, unheard };
}
