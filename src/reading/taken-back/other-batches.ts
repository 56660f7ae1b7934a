/** What a post tells of other batches than the one that is asked about: it gives way, or fills what this one lacks. */

import { type Amount, isAmount, isThing } from '../rows/kinds.ts';
import { cue } from '../words/cue-words.ts';
import type { Quantity } from '../words/quantities.ts';
import { written } from './put-right.ts';
import { isAlkali, isFat, isOther, isSame, type Said } from './said.ts';
import type { Told } from './tellings.ts';
import { dropAll, elsewhere, type Post } from './withdrawn.ts';

/** "How much lye for the new one?" */
export const asking =
  /\bwhat(?:s| is) (?:the |my |our )?@ (?:amount |weight )?for (?:ours|mine|us|this|it)\b|\bhow much @ [^#]*\?|\bwhat @ (?:do|does|should|will|would|for|now) |\bhow much @ for\b|\bhow many (?:grams?|g|oz|ounces) (?:of )?(?:it|that|@)|@ (?:please|pls|plz)\b|^(?:so |and |what )?@ (?:for (?:it|this|that|the new one) )?\?/;

/** "I haven't got a lye amount yet", "lye not worked out", "I need a lye weight", "8 % superfat please". */
const lacking =
  /\b(?:no|havent got|havent|dont have|have no|without|need|missing|lack|want) (?:a |an |any |the |my |new )*@ (?:amount|figure|weight|number|value|yet)\b|\b(?:need|havent got|dont have|have no) (?:a |an |any |the |my |new )*@ (?:$|[.,;!?]|for\b)|@ (?:(?:amount|figure|weight|is|has|still|yet|was) )*(?:not|isnt|hasnt|wasnt|to be) (?:been |yet )*(?:worked out|calculated|reckoned|figured out|known|decided|weighed)\b|\bsuperfat (?:of |at )?# (?:, )?(?:please|pls|plz)\b|# superfat (?:, )?(?:please|pls|plz)\b/;
/** What of the earlier batch stays as it was. */
const kept = /\b(?:same|still|stays?|stayed|kept|keep|keeping|unchanged|again|enough|as (?:before|then|last time))\b/;

/** Alkali to fats by mass, in soaps that people make. */
const usual = { least: 0.08, most: 0.32 } as const;

/** Fats and an alkali that fits them. */
function isRecipe(list: readonly Said[]): boolean {
  const keys = new Set<string>();
  const first = list.filter(({ key }) => keys.size < keys.add(key).size);
  const sum = (of: (one: Said) => boolean): number =>
    first.filter(of).reduce((all, { amount: { quantity } }) => all + quantity.value, 0);
  const dims = new Set(list.filter((one) => isFat(one) || isAlkali(one)).map(({ amount }) => amount.quantity.dim));
  const ratio = sum(isAlkali) / sum(isFat);
  return dims.size === 1 && ratio >= usual.least && ratio <= usual.most;
}

/** "Everything else as in the book": what the other telling has, and this one has not, counts. */
const everythingElse =
  /\b(?:(?:everything|all) else|the rest|rest (?:is |was |went )?(?:as|like|same|of it as|by)|otherwise|unchanged|not changed|(?:as|like) (?:in|on|by|printed|planned|written)|by the (?:book|recipe|sheet)|kept (?:both|them|all))\b/;
const allTheSame = /\b(?:the same|kept it)\b/;

/** Two of which nobody says that one counts. */
const severalAsked =
  /\b(?:which (?:one|of (?:them|these|the two|those)|version|recipe|batch)|either|both (?:recipes?|batches|versions|of them)|compar(?:e|ing)|two (?:recipes|versions|batches))\b/;

/** "Is mine ok?" */
const mineAsked =
  /\b(?:mine|ours|my (?:own|lye|one|version|batch|pot|figures?|amounts?)|what i (?:really )?(?:did|took|used|have|weighed))\b[^?]*\?/;

/** What somebody always does, or does with a soap of their own: nothing of it is in this pot. */
const habit =
  /^(?:and |but )?(?:others|people|some|many|most|other) |\b(?:uses|takes|makes|does|has|adds|prefers|likes|loves|swears|runs|wants|always|usually|hers|theirs|(?<=[\p{L}]+ )his with)\b/u;
const likewise =
  /\b(?:(?:i|we|mine|ours) (?:did|do|have|went|took|has|had|am|put|use|used|copied|followed)\b(?! (?:not|never)\b)|so (?:do|did|have|am) (?:i|we)|me too|likewise|same here|in mine|too)\b/;
const likewiseNext =
  /^(?:and |but |so |then )*(?:(?:i|we) (?:did|do|have|will|am|copied|followed|went)\b(?! (?:not|never|no)\b)(?: [a-z]+){0,4} [.!,]|so (?:do|did|have|am) (?:i|we)\b|me too|mine too|likewise|same here)/;

/** "Comparison: the book has 350 g coconut". */
const compared = /\b(?:for|as a) comparison\b(?! (?:to|with)\b)|^comparison :/;

function isHabit({ sentences }: Post, { amount, telling }: Said): boolean {
  const k = sentences.findIndex(({ from, to }) => from <= amount.from && amount.from < to);
  const [said, next] = [sentences[k]?.text ?? '', sentences[k + 1]?.text ?? ''];
  return (telling === 'told' ? compared : habit).test(said) && !likewise.test(said) && !likewiseNext.test(next);
}

/** What is told of other batches gives way to what is asked about; all of it where that is a recipe by itself. */
export function settleTellings(post: Post): void {
  if (post.tellings.size === 0) return;
  const { sentences } = post;
  const says = (words: RegExp): boolean => sentences.some(({ text }) => words.test(text));
  const asksOfMine = (): boolean =>
    sentences.some((one) => (one.cues & cue.mine) !== 0 && one.text.includes('?') && mineAsked.test(one.text));
  const left = post.said.filter((one) => !post.gone.has(one.amount));
  const counts = ({ stance }: Said): boolean => stance === 'now' || stance === 'right';
  const isElse = (one: Said): boolean => isOther(one.telling) && !counts(one);
  // "our recipe: …, and my friend does hers with …": the page is one's own
  const isOwnPage = left.some(({ telling }) => telling === 'others') && left.every((one) => !isFat(one) || isElse(one));
  const isAway = (one: Said): boolean => isElse(one) && !(isOwnPage && one.telling === 'told');
  // "Last time I used 120 g lye. Olive 500 g, …": what follows is no more of last time
  const carries =
    left.some((one) => isFat(one) && !isAway(one)) || left.every((one) => !isAway(one) || one.telling === 'told');
  const mine: Said[] = [];
  const all: Said[] = [];
  for (const one of left) (isAway(one) && (carries || !one.carried) ? all : mine).push(one);
  const saysRest = (): boolean => says(everythingElse) || says(allTheSame);
  const isAnnounced = mine.some(({ telling }) => telling === 'mine') || asksOfMine();
  // "my mum uses 100 g palm. And 450 g lard": what stands before the list may be of it
  const listed = mine.find(isFat)?.amount.from ?? Number.POSITIVE_INFINITY;
  const isTheirs = (one: Said): boolean =>
    (one.telling === 'others' || one.telling === 'told') && one.amount.from > listed && isHabit(post, one);
  const away = all.filter((one) => isAnnounced || one.telling === 'once' || one.telling === 'later' || isTheirs(one));
  if (away.length === 0) return;
  const gives = new Set(away);
  const isWhole = isRecipe(mine) || isAllShares(mine);
  const several = isWhole && isRecipe(away);
  if (several && (!isAnnounced || says(severalAsked))) return;
  const fats = mine.filter(isFat);
  const had = new Set(away.filter(isFat).map(({ key }) => key));
  const isEnough = fats.length > 1 || had.size <= 2;
  const lacksLye = fats.length > 0 && !mine.some(isAlkali);
  // "53 g lye on 400 g lard, and I have 550 g": the lye belongs to its own fat
  const isPair =
    lacksLye && fats.length === 1 && isRecipe(away) && had.size === 1 && fats.every(({ key }) => had.has(key));
  const asks = lacksLye && (((fats.length > 1 || isPair) && says(asking)) || (away.some(isAlkali) && says(lacking)));
  const isStale = lacksLye && fats.length > 1 && isRecipe(away) && !fats.every((one) => had.has(one.key));
  const isKept = isPair ? keepsLye(post) || says(everythingElse) : says(kept) || saysRest();
  if ((isStale || isPair) && !asks && !isKept) post.unclear ??= away.find(isAlkali)?.thing.named.text ?? null;
  const hasWater = mine.some(isLiquid);
  if ((isWhole && isEnough && !saysRest()) || asks) {
    const pointedAt = new Set(mine.filter(({ pointing }) => pointing).map(({ key }) => key));
    const gone = away.filter((one) => isStuff(one) && !pointedAt.has(one.key) && (hasWater || !isLiquid(one)));
    if (gone.length > 0) dropAll(post, gone, mine);
    dropLoose(post, (of) => isOther(of.telling) && (carries || !of.carried) && (isAnnounced || of.telling !== 'told'));
  } else {
    const weighed = new Set(mine.map(({ key, amount }) => `${key} ${amount.quantity.value.toPrecision(4)}`));
    const isAgain = ({ key, amount }: Said): boolean => weighed.has(`${key} ${amount.quantity.value.toPrecision(4)}`);
    const again = away.filter((one) => isStuff(one) && !one.pointing && isAgain(one));
    if (again.length > 0) dropAll(post, again, mine);
    const later = away.filter((one) => one.telling === 'later' && isStuff(one) && !post.gone.has(one.amount));
    const isMore = !later.some((one) => isAlkali(one) || isLiquid(one));
    if (later.length > 0 && (isWhole || (fats.length > 1 && isMore))) dropAll(post, later, mine);
  }
  post.said = post.said.map((one) =>
    gives.has(one) ? { ...one, stance: one.telling === 'once' || one.telling === 'later' ? 'once' : 'others' } : one,
  );
}

/** "With the same lye", "the lye stays as it was": of the alkali itself, and not of the fat. */
const lyeKept = [
  /\b(?:same|kept|keep|keeping|unchanged) (?:(?:amount|weight|the|my|of|#) )*@/g,
  /@ (?:(?:#|is|was|i|we|just|it) )*(?:the same|stays?|stayed|kept|keep|unchanged|as before)\b/g,
];

const keepsLye = ({ sentences, items }: Post): boolean => {
  const lyes = new Set(
    items.flatMap((item) => (isThing(item) && item.named.meaning.kind === 'alkali' ? [item.from] : [])),
  );
  return sentences.some((one) =>
    lyeKept.some((words) =>
      [...one.text.matchAll(words)].some(({ index, 0: said }) => lyes.has(one.tokenAt(index + said.indexOf('@')))),
    ),
  );
};

const isLiquid = ({ key }: Said): boolean => /^(?:water|liquid|ice)/.test(key);

/** What goes into a pot; a superfat or a purity may be of all batches. */
const isStuff = ({ key }: Said): boolean =>
  /^(?:share of (?!alkali|stock))?(?:fat|alkali|stock|water|liquid|ice|acid|additive|scent)\b/.test(key);

/** Shares of fats that make a whole. */
function isAllShares(list: readonly Said[]): boolean {
  const shares = list.filter(({ key }) => key.startsWith('share of fat'));
  const sum = shares.reduce((all, { amount: { quantity } }) => all + quantity.value, 0);
  return shares.length > 1 && Math.abs(sum - 1) < 0.01;
}

/** Figures of a post that are compared with each other, at the most: a recipe or two have fewer. */
const mostCompared = 80;

/** "Because half a pound seemed a lot", "so 35 g it was": a weight that is told already, spoken of once more. */
export function dropSaidAgain(post: Post): void {
  if (post.said.length > mostCompared) return;
  const drops = (item: Amount, name: string): void => {
    post.gone.add(item);
    post.back.push({
      text: `I took "${written(item.quantity)}" as said of ${name} again.`,
      gone: [item.quantity],
      from: item.from,
      to: item.to,
    });
  };
  for (const one of post.said) {
    if (!one.pointing || post.gone.has(one.amount)) continue;
    const isAgain = post.said.some(
      (other) => other !== one && other.key === one.key && isSame(one.amount.quantity, other.amount.quantity),
    );
    if (isAgain) drops(one.amount, one.thing.named.text);
  }
  const changed = post.said.filter(
    ({ amount, telling, stance }) =>
      (isOther(telling) && post.gone.has(amount)) || stance === 'now' || post.instead.has(amount),
  );
  for (const item of changed.length > 0 ? post.items : []) {
    if (!isAmount(item) || post.bound.has(item) || post.gone.has(item) || item.quantity.dim !== 'mass') continue;
    const differs = changed.some(({ amount, key }) =>
      post.said.some(
        (other) =>
          other.key === key &&
          item.quantity.value > 0 &&
          Math.abs(Math.abs(other.amount.quantity.value - amount.quantity.value) - item.quantity.value) <
            0.002 * amount.quantity.value,
      ),
    );
    if (differs) {
      post.gone.add(item);
      const text = `I left out "${written(item.quantity)}", the difference of two figures of the post.`;
      post.back.push({ text, gone: [item.quantity], from: item.from, to: item.to });
      continue;
    }
    const one = changed.find(({ amount }) => {
      const instead = post.instead.get(amount);
      const counts = isAmount(instead) ? instead : amount;
      return isSame(amount.quantity, item.quantity) || isSame(counts.quantity, item.quantity);
    });
    if (one) drops(item, one.thing.named.text);
  }
}

/** Weights of another batch beside which nothing is named. */
function dropLoose(post: Post, isElse: (of: Told) => boolean): void {
  const loose: Quantity[] = [];
  for (const item of post.items) {
    if (post.bound.has(item)) continue;
    const of = post.tellings.get(item);
    if (!of || !isElse(of)) continue;
    // "last batch was 60/30/10 olive/coconut/castor"
    if (isThing(item) && item.named.meaning.kind === 'fat' && !of.carried) post.gone.add(item);
    if (
      !isAmount(item) ||
      !(/^(?:mass|volume)$/.test(item.quantity.dim) || (item.quantity.dim === 'bare' && !of.carried))
    )
      continue;
    post.gone.add(item);
    loose.push(item.quantity);
  }
  if (loose.length === 0) return;
  const from = post.items[0]?.from ?? 0;
  const text = `I left out "${loose.map(written).join(', ')}", ${elsewhere}.`;
  post.back.push({ text, gone: loose, from, to: from + 1 });
}
