/** What somebody makes as a rule, or has never made: "I've never gone over 1 kg before", "I usually do 500 g". */
import { isIngredient, isWord, sentenceAt, spoken } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

const leading: ReadonlySet<string> = new Set(
  'over above beyond under below exceeded than to make makes made making do does did doing is was be ever only past'.split(
    ' ',
  ),
);
const longestLook = 14;
/** Up to the figure, where no verb is said: "never done this big before, usually 1 kilo". */
const asARule =
  /\b(?:usually|normally|generally|typically|mostly)(?: (?:its|it is|was|its been|just|only|about|around|roughly|maybe|like|more like|under|up to))*$/;

/** Up to the figure: how much at the most, or at the least. */
const bound =
  /\b(?:over|above|beyond|under|below|exceeded|past|(?:more|bigger|larger|less|smaller|higher) than|up to)(?: (?:about|around))?$/;
/** What tells of all batches, or of the first of a kind. */
const ofAll =
  /\b(?:never|ever|always|usually|normally|generally|rarely|first|anything|nothing|nervous|before|so far)\b/;
/** Up to the figure, of somebody's batches. */
const habit =
  /\b(?:(?:i|we)(?: have|ve)? (?:usually|normally|always|generally|typically|mostly|only ever|ever only|only) (?:only )?(?:make|makes|made|do|did|done)|(?:am|im|are|we are) used to|(?:usually|normally) (?:its|it is|is)|(?:most|biggest|largest|limit|maximum|normal|usual)(?: [a-z]+){0,4} (?:is|was|has been)|(?:so far|up to now|until now)(?: [a-z]+){0,4} (?:made|did|done|only))(?: (?:only|about|around))?$/;

/** `shared`: the post tells of shares of its fats, whose total may be what is usually made. */
export function isHabit(tokens: readonly Token[], k: number, { quantity }: Figure, shared: boolean): boolean {
  if (quantity.dim !== 'mass') return false;
  const isBare = !shared && asARule.test(wordsOf(tokens, Math.max(0, k - mostAdverbs), k));
  if (!isBare && !leading.has(spoken(tokens[k - 1]))) return false;
  if (isIngredient(tokens[k + 1]) || (isWord(tokens[k + 1], 'of') && isIngredient(tokens[k + 2]))) return false;
  const { from, to } = sentenceAt(tokens, k, longestLook);
  const names = tokens.slice(from, to).filter(isIngredient);
  if (names.some(({ meaning }) => meaning.kind !== 'alkali')) return false;
  const before = wordsOf(tokens, from, k);
  return (
    isBare ||
    (!shared && habit.test(before)) ||
    (bound.test(before) && ofAll.test(`${before} ${wordsOf(tokens, k + 1, to)}`))
  );
}

/** Words of it, at the most. */
const mostAdverbs = 4;

const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens.slice(from, to).map(spoken).join(' ').replace(/['’]/g, '').replace(/ +/g, ' ').trim();
