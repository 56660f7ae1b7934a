/** Scents, colours and powders that are called after a fat: "scent: Coconut Beach 40 g", "1 tsp avocado green oxide". */
import { isMark, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

type Name = Extract<Token, { t: 'name' }>;

const scents: ReadonlySet<string> = new Set(
  'scent scents fragrance fragrances fragrance-oil fragrance-oils perfume parfum parfüm fo eo essential-oil'.split(' '),
);
const colour =
  /^(?:(?:light|dark|bright|pale|moss|forest) )?(?:green|brown|orange|yellow|pink|red|blue)(?: (?:oxide|mica|clay|pigment|powder|dye|colou?r|colou?rant))*$/;
const parts = /^(?:leaf|leaves|powder|flour|pulp|shell|shells|stone|stones|husk|husks|seeds|flowers?|extract|meal)$/;
/** Words of such a name behind the fat's, at the most. */
const mostWords = 3;

const isCalled = (token: Token | undefined): token is Name =>
  token?.t === 'name' &&
  ((token.meaning.kind === 'fat' && token.how === 'plain' && !/ /.test(token.meant)) ||
    token.meaning.kind === 'liquid');

const isScent = (token: Token | undefined): token is Name =>
  token?.t === 'name' && token.meaning.kind === 'scent' && scents.has(token.meant.replace(/ /g, '-'));

/** "Scent:", "fragrance was called", "scented with", right before token `k`, and before its figure where one stands there. */
function scentBefore(tokens: readonly Token[], k: number): boolean {
  let at = k - 1;
  if (tokens[at]?.t === 'quantity') at--;
  // "FO: oatmeal stout type"
  for (let words = 0; words < mostWords && isOwn(tokens[at]) && !isScent(tokens[at]); words++) at--;
  while (k - at <= mostBefore && (isMark(tokens[at], ':="“') || between.test(spoken(tokens[at])))) at--;
  if (/^(?:no|without|not|any)$/.test(spoken(tokens[at - 1]))) return false;
  return isScent(tokens[at]) || /^(?:scented|perfumed|fragranced)$/.test(spoken(tokens[at]));
}
const mostBefore = 6;
const between = /^(?:is|was|with|of|called|named|the|a|in|used|i)$/;

const isOwn = (token: Token | undefined): boolean =>
  (token?.t === 'word' && /^(?:everyday|unknown)$/.test(token.sort) && !light.test(token.text)) ||
  (token?.t === 'name' && /^(?:scent|additive|role)$/.test(token.meaning.kind)) ||
  isMark(token, '&');

const light =
  /^(?:from|in|into|for|at|as|on|by|not|no|to|that|which|i|we|is|was|are|were|goes|went|melted|unrefined|refined|raw|virgin|extra|organic|pure|deodori[sz]ed|solid|liquid|fresh|old|left|please|then|than|instead|about)$/;

/** Behind the words of the name that follow on its line, with no mark or figure between. */
function endOfWords(tokens: readonly Token[], from: number): number {
  let end = from;
  while (end - from < mostWords && isOwn(tokens[end])) end++;
  return end;
}

const textOf = (token: Token): string => ('text' in token ? token.text.toLowerCase() : '');

/** Where a name ends that is called so at token `k`, and what it is then; null where it is the fat itself. */
function calledAt(
  tokens: readonly Token[],
  k: number,
): { readonly to: number; readonly kind: 'scent' | 'additive' } | null {
  const end = endOfWords(tokens, k + 1);
  for (let at = k + 1; at < end; at++) if (isScent(tokens[at])) return { to: at + 1, kind: 'scent' };
  const said = tokens.slice(k + 1, end).map(textOf);
  for (let words = said.length; words > 0; words--)
    if (colour.test(said.slice(0, words).join(' '))) return { to: k + 1 + words, kind: 'additive' };
  if (isMark(tokens[k + 1], '-') && parts.test(spoken(tokens[k + 2]))) return { to: k + 3, kind: 'additive' };
  // "no scent: coconut 300 g"
  return end > k + 1 && scentBefore(tokens, k) ? { to: end, kind: 'scent' } : null;
}

const opening = `"'“‘„«»`;
const closing = `"'”’“‘»«`;

/** Behind the quote of a name that begins at token `from`; -1 where it is none. */
function endOfQuote(tokens: readonly Token[], from: number): number {
  let end = from;
  while (
    end - from <= mostWords &&
    'text' in (tokens[end] ?? {}) &&
    tokens[end]?.t !== 'line' &&
    !isMark(tokens[end], closing)
  )
    end++;
  return isMark(tokens[end], closing) ? end + 1 : -1;
}

/** The tokens with such names whole; their other words are filled up. */
export function scentCalled(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  const fill = (from: number, to: number): void => {
    for (let k = from; k < to; k++) if (out?.[k]) out[k] = asFiller(out[k] as Token);
  };
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    // "fragrance “cotton”"
    const quoted = isScent(token) && isMark(tokens[k + 1], opening) ? endOfQuote(tokens, k + 2) : -1;
    const found = isCalled(token) ? calledAt(tokens, k) : null;
    if (quoted < 0 && !found) continue;
    out ??= [...tokens];
    fill(k + 1, found?.to ?? quoted);
    if (found && isCalled(token)) {
      const text = [token.text, ...tokens.slice(k + 1, found.to).map(textOf)].join(' ');
      const id = found.kind === 'scent' ? 'fragrance-oil' : 'pigment';
      out[k] = { ...token, text, meaning: { kind: found.kind, id }, how: 'name', meant: text.toLowerCase() };
    }
    k = (found?.to ?? quoted) - 1;
  }
  return out ?? tokens;
}
