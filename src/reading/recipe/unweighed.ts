/** A fat of the list that goes in by no weight: "whatever was left in the coconut jar", "the dregs of the olive bottle". */
import type { Bound } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { endsDotted, isMark, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** What begins such a part of a list. */
const amountless =
  /(?:^|\b(?:and|with|plus|then|also|used|added|took|put in) )(?:whatever|what|everything|all|any|as much|enough|remaining|leftovers?|(?:the |an? |some |my |one |half |of )*(?:rest|last|ends?|dregs|scrapings?|remains|remainder|leftovers?|remnants?|bottom|contents|unknown|unweighed|unmeasured|same)|(?:one|an?|half an?|the) (?:jar|tub|tin|bottle|bag|pot) ?s? worth)\b/;
/** "I forgot how much coconut". */
const unknown = /\b(?:not sure|dont know|didnt weigh|forgot|no idea|cant remember|cant say) how much @/;
/** "I scraped out the coconut jar as well." */
const emptied =
  /^(?:(?:i|we|then|and|also|just|ve|have) )*(?:scraped|emptied|tipped|chucked|threw|dumped) (?:(?:out|in|up|the|of|my|whole|rest|last|our|all) )*@/;

/** Said of what does not go in, or of why. */
const denied =
  /\b(?:no|not|none|never|without|gave|given|went into|last week|say|says|instead|replac\w*|swap\w*|substitut\w*|place|lieu|than|free|out|skip\w*|omit\w*|minus|except|hate|dear|expensive|unlike|like|would|d|if|because|since|allerg\w*|dont|didnt|cant|wont|isnt|wasnt|nor|for)\b/;

/** Words of such a part to each side of the name, at the most. */
const mostWords = 10;

const isParting = (token: Token | undefined): boolean =>
  isStop(token) ||
  endsDotted(token) ||
  isMark(token, ',:\t•+&()') ||
  (token?.t === 'word' && token.sort === 'joint' && /^(?:and|plus)$/.test(token.text));

/** The part of a list that the thing at `at` stands in says no weight of it. */
export function isUnweighed(tokens: readonly Token[], items: readonly Item[], at: number, { groupOf }: Bound): boolean {
  const item = items[at];
  if (!item) return false;
  let [from, to] = [item.from, item.to];
  while (from > 0 && item.from - from < mostWords && !isParting(tokens[from - 1])) from--;
  while (to < tokens.length && to - item.to < mostWords && !isParting(tokens[to])) to++;
  const part = tokens.slice(from, to);
  if (part.some((one) => one.t === 'quantity' || one.t === 'aside')) return false;
  const said = part.map((one) => spoken(one) || (one.t === 'name' ? '@' : '')).join(' ');
  const isUnknown = unknown.test(said);
  const isEmptied = emptied.test(said);
  if (denied.test(isEmptied ? said.replace(/ out\b/, '') : said) && !isUnknown) return false;
  let [before, next] = [at - 1, at + 1];
  while ((items[before]?.from ?? -1) >= from) before--;
  while ((items[next]?.from ?? to) < to) next++;
  const [previous, following] = [items[before], items[next]];
  const rowBefore = previous !== undefined && groupOf[before] !== undefined;
  const rowBehind = following !== undefined && groupOf[next] !== undefined && following.from - to <= 2;
  const runsOn = rowBefore && !tokens.slice(previous.to, from).some(isStop);
  const goesOn = rowBehind && !tokens.slice(to, following.from).some(isStop);
  if (amountless.test(said) || isUnknown)
    return runsOn || goesOn || (rowBefore && rowBehind && from - previous.to <= 1);
  return (runsOn && goesOn) || (rowBefore && isEmptied) || (runsOn && from - previous.to <= 2 && isBare(part));
}

/** "Coconut 150 g and olive": nothing but the name. */
const isBare = (part: readonly Token[]): boolean =>
  part.every((one) => one.t === 'name' || (one.t === 'word' && /^(?:some|a bit of|the|oil)$/.test(one.text)));
