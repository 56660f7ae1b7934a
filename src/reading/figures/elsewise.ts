/**
 * Figures of sentences that speak of something else than the recipe: what somebody drank, what a parcel weighed, a share
 * of people, degrees that say no unit.
 */

import { cue } from '../words/cue-words.ts';
import { listed, signal } from '../words/signal-words.ts';
import { givesAround, givesAt, type Signals, saysAround } from '../words/signals.ts';
import {
  endsDotted,
  isFat,
  isIngredient,
  isMark,
  isMeasured,
  isRole,
  isStop,
  isUnspoken,
  type Span,
  sentenceAt,
  spoken,
} from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { weighedElsewhere, weighedFats } from '../words/weighed.ts';
import { isYear } from './counts.ts';
import { isHabit } from './habits.ts';
import { inStore } from './in-store.ts';
import { drunk, othersSoap, otherUse, soapNamed } from './other-use.ts';
import { renderedOf } from './rendered.ts';

const otherWeight = 'the weight of something else';
const ofOthers = 'of somebody else';
const ruleOfOthers = 'a rule of others';
const difference = 'a difference';
const otherBatch = 'of another batch';
const soapMade = 'of the soap that was made';
/** Reasons that the answer tells. */
export const ofElse: ReadonlySet<string> = new Set([
  drunk,
  otherWeight,
  ofOthers,
  ruleOfOthers,
  difference,
  otherBatch,
  soapMade,
  otherUse,
  othersSoap,
  soapNamed,
  renderedOf,
]);

type Name = Extract<Token, { t: 'name' }>;

/** Words to each side of a figure that are looked at. */
const longestLook = 16;

const inside = (tokens: readonly Token[], { from, to }: Span): readonly Token[] => tokens.slice(from, to);

const drinks = /^(?:tea|coffee|beer|wine|cider|milk|juice|water|hard-cider|stout)|-(?:tea|coffee|beer|wine|juice)$/;
const drinking = /^(?:drank|drink|drinks|drinking|sip|sipped|sipping|had|having|enjoy|enjoying|enjoyed)$/;
/** Of a cup or a glass; what is measured otherwise may be for the pot. */
const holding = /^(?:have|need|over|with)$/;
const ofPot =
  /^(?:instead|used|use|using|replace|replaced|replacing|swap|swapped|lye|froze|frozen|flat|boiled|brewed|strong|cooled|dissolve|dissolved|pour|poured|for|into|weighed|goes|went|added|add|left|recipe|liquid|soap)$/;

/** "I have a cup of tea beside me", "I had 2 beers": what somebody drank, and no liquid of the pot. */
function isDrunk(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  if (quantity.dim === 'mass' || (quantity.dim === 'bare' && quantity.value > 12)) return false;
  const name = isIngredient(tokens[k + 1]) ? tokens[k + 1] : tokens[k + 2];
  if (
    !isIngredient(name) ||
    !(name.meaning.kind === 'liquid' || name.meaning.kind === 'water') ||
    !drinks.test(name.meaning.id)
  )
    return false;
  if (name.meaning.kind === 'water' && !/^dr[aiu]nk/.test(spoken(tokens[k - 1]))) return false;
  let at = k - 1;
  while (k - at <= 3 && /^(?:a|an|my|about|only|just|the|now|some)$/.test(spoken(tokens[at]))) at--;
  const verb = spoken(tokens[at]);
  if (!drinking.test(verb) && !(holding.test(verb) && quantity.inWords)) return false;
  const sentence = inside(tokens, sentenceAt(tokens, k, longestLook));
  return !sentence.some(
    (one) => (one !== name && isIngredient(one)) || isRole(one, 'solution') || ofPot.test(spoken(one)),
  );
}

/** "Give or take 1 g", "plus minus 1 g", "rounded everything to 5 g", "two tables off by 2 g". */
function isTolerance(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  if (quantity.dim !== 'mass' || isIngredient(tokens[k + 1])) return false;
  const before = spoken(tokens[k - 1]);
  if (before === 'take') return spoken(tokens[k - 2]) === 'or' && spoken(tokens[k - 3]) === 'give';
  if (before === 'minus') return /^(?:plus|\+|or)$/.test(spoken(tokens[k - 2]));
  if (before === 'within') return true;
  return before === 'to' && [k - 2, k - 3, k - 4].some((at) => /^round/.test(spoken(tokens[at])));
}

/** "In 2019". */
const isOfYear = (token: Token): boolean =>
  token.t === 'aside' ? token.reason === 'a year' : token.t === 'quantity' && isYear(token);

const changed: ReadonlySet<string> = new Set(['less', 'more', 'fewer']);
const times =
  '(?:the |that |this |my )?(?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december|past|last|first|old|previous|other|class|book)';
const unsure = new RegExp(
  `\\b(?:would|should|could|wonder|wondering|if|maybe|perhaps|better|last|(?:the |my |her |his )old|year|(?<!in |that |for |at )once(?! (?:it|that|this|the|all|done|cooked))|earlier|before|than|(?<!\\b(?:it|which|that) )had|in (?:${times}|$)|usual|usually)\\b`,
);
/** "Would 5 g less lye be better?", "in spring I used 20 g less lye": a difference, and no amount. */
function isDifference(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  if (quantity.dim !== 'mass' || !changed.has(spoken(tokens[k + 1]))) return false;
  // "2 g less than 127 g" is what is left
  if (spoken(tokens[k + 2]) === 'than' && tokens[k + 3]?.t === 'quantity') return false;
  const words = inside(tokens, sentenceAt(tokens, k, longestLook)).map((one) => (isOfYear(one) ? 'year' : spoken(one)));
  return unsure.test(words.join(' '));
}

const lowering = 'lowered|cut|reduced|dropped|decreased';
const raising = 'put|raised|increased|upped|bumped|pushed|lifted|took|turned';
/** Up to the figure: by how much the alkali or the water became more or less. */
const movedBy = new RegExp(
  `\\b(?:(?:${raising}|${lowering}) (?:the |my )?(?:lye|naoh|koh|caustic(?: soda)?|alkali|water|it)(?: up| down| back)?(?: by)?|(?:put|went|is|was|goes) (?:it )?(?:up|down) by)(?: about| around| roughly| some)?$`,
);

/** "I put the lye up by 12 g because of the acid": how much of the weight above is more than it was. */
function isMovedBy(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  const last = spoken(tokens[k - 1]);
  if (quantity.dim !== 'mass' || isIngredient(tokens[k + 1]) || !(byHow.has(last) || isIngredient(tokens[k - 1])))
    return false;
  const { from } = sentenceAt(tokens, k, longestLook);
  const names = inside(tokens, { from, to: k }).filter(isIngredient);
  const name = names.at(-1);
  if (name && !/^(?:alkali|water)$/.test(name.meaning.kind)) return false;
  const before = inside(tokens, { from, to: k }).map((one) =>
    isIngredient(one) ? one.text.toLowerCase() : spoken(one),
  );
  return movedBy.test(before.join(' ')) && (!name || weighedElsewhere(tokens, tokens.indexOf(name)));
}

const byHow: ReadonlySet<string> = new Set('by about around roughly some up down'.split(' '));

const ofSoap = /^(?:soap|batter|paste|dough|loaf|bar|soup)$/;
/** "I took out 300 g of the batter", "1 g of soap in 100 ml water": of what was made, and no ingredient. */
function isOfSoap(tokens: readonly Token[], k: number, signals: Signals): boolean {
  let at = k + 1;
  const next = spoken(tokens[at]);
  if (next.startsWith('of ') && /^of (?:the )?(?:soap|batter|paste)$/.test(next)) return true;
  if (next !== 'of') return isTried(tokens, k, signals);
  at++;
  while (/^(?:the|my|this|that|raw|finished|ready|fresh)$/.test(spoken(tokens[at]))) at++;
  return ofSoap.test(spoken(tokens[at])) || (spoken(tokens[at]) === 'it' && isTried(tokens, k, signals));
}

const isTried = (tokens: readonly Token[], k: number, signals: Signals): boolean => {
  if (!givesAround(signals, k, signal.trying)) return false;
  const { from, to } = sentenceAt(tokens, k, longestLook);
  let tries = false;
  for (let at = from; at < to; at++)
    tries ||= givesAt(signals, at, signal.trying) && (listed(spoken(tokens[at])) & signal.trying) !== 0;
  if (!tries) return false;
  const sentence = tokens.slice(from, to);
  return (
    sentence.some((one) => /(?:^|of )soap$/.test(spoken(one)) || ofSoap.test(spoken(one)) || spoken(one) === 'it') &&
    sentence.every((one) => !isIngredient(one) || one.meaning.kind === 'water')
  );
};

/** "5 % water discount": less water, and no superfat. */
const isWaterDiscount = (tokens: readonly Token[], k: number): boolean => {
  const [water, discount] = [tokens[k + 1], tokens[k + 2]];
  return (
    water?.t === 'name' && water.meaning.kind === 'water' && discount?.t === 'name' && /^discount/i.test(discount.text)
  );
};

/** "142 plus 6 for the citric": of the lye, what the acid eats, where the acid itself is weighed; where its name stands. */
function forAcid(tokens: readonly Token[], k: number): number | null {
  if (spoken(tokens[k + 1]) !== 'for') return null;
  const at = /^(?:the|my)$/.test(spoken(tokens[k + 2])) ? k + 3 : k + 2;
  const name = tokens[at];
  return isIngredient(name) && name.meaning.kind === 'acid' && weighedElsewhere(tokens, at) ? at : null;
}

const flakes = /^(?:flakes?|pellets?|beads|prills|crystals|granules)$/;

/** "How much KOH flake … , flake is 90 %": what the alkali is sold as says its purity; where that word stands. */
const flakeAt = (tokens: readonly Token[], k: number, { quantity }: Figure): number | null =>
  quantity.value >= leastPure && /^(?:is|are|at)$/.test(spoken(tokens[k - 1])) && flakes.test(spoken(tokens[k - 2]))
    ? k - 2
    : null;
const leastPure = 0.7;

const owning = /^(?:have|got|ive|bought|own|keep|has)$/;
const usingIt =
  /^(?:use|used|using|take|took|put|goes|went|into|for|make|turn|all|whole|up|from|want|need|how|what|lye)$/;

/** "I have a 5 kg bag of stearic": a pack that nobody says to be used, beside a recipe of others; where its name stands. */
function ownPackOf(tokens: readonly Token[], k: number, { quantity }: Figure, fats: () => number): number | null {
  if (quantity.dim !== 'mass' || spoken(tokens[k - 1]) !== 'a' || !owning.test(spoken(tokens[k - 2]))) return null;
  if (!isRole(tokens[k + 1], 'pot')) return null;
  const at = spoken(tokens[k + 2]) === 'of' ? k + 3 : k + 2;
  const name = tokens[at];
  if (!isIngredient(name) || name.meaning.kind !== 'fat' || fats() < leastFats) return null;
  const sentence = inside(tokens, sentenceAt(tokens, k, longestLook));
  return sentence.filter(isIngredient).length > 1 || sentence.some((one) => usingIt.test(spoken(one))) ? null : at;
}

/** Fats that are weighed, which make a recipe without the pack. */
const leastFats = 2;
const weighing: ReadonlySet<string> = new Set('is was weighs weighed were are had has'.split(' '));
const moving: ReadonlySet<string> = new Set(
  'lost gained carried carry lifted dragged hauled lugged weigh drove schlepped'.split(' '),
);
const ofRecipe =
  /^(?:mix|mixture|batch|rest|other|others|same|total|sum|amount|weight|first|second|third|last|pot|oil|oils|fat|fats|half|everything|all|one|ones|recipe|base|blend|loaf|batter|dough|paste|stock|amounts|figure|number|lot|thing|stuff|yield|result|half|it|that|this|there|these|those|they|which|what|remaining|remainder|content|contents)$/;

const nearly: ReadonlySet<string> = new Set(
  'about around only just nearly almost already over roughly some'.split(' '),
);

/** "The baby is 3.6 kg", "I lost 2 kg": of somebody or something that the sentence names, and no recipe does. */
function isOther(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  if (quantity.dim !== 'mass') return false;
  let at = k - 1;
  while (k - at <= 3 && nearly.has(spoken(tokens[at]))) at--;
  const verb = spoken(tokens[at]);
  const noun = tokens[at - 1];
  if (moving.has(verb)) return /^(?:i|he|she|we|they|you)$/.test(spoken(noun)) && namesNothing(tokens, k);
  if (!weighing.has(verb) || noun?.t !== 'word' || noun.sort !== 'everyday' || ofRecipe.test(noun.text)) return false;
  return /^(?:the|my|our|his|her|their|your|a|an|this|that)$/.test(spoken(tokens[at - 2])) && namesNothing(tokens, k);
}

/** The sentence around token `k` names nothing that a recipe does. */
const namesNothing = (tokens: readonly Token[], k: number): boolean =>
  inside(tokens, sentenceAt(tokens, k, longestLook)).every(
    (one) => one.t !== 'name' || one.meaning.kind === 'unknown' || weighing.has(spoken(one)),
  );

/** "A pint later I felt better", "half a kilo ago". */
const isTelling = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean => {
  const word = spoken(tokens[k + 1]);
  if ((word === 'later' || word === 'ago') && !endsDotted(tokens[k])) return true;
  // "since I was given five litres by people who came back"
  if (/^(?:given|gifted|handed|inherited)$/.test(spoken(tokens[k - 1])) && /^(?:by|from|for|and|when|at)$/.test(word))
    return true;
  // "hard as a stone"
  return quantity.inWords && quantity.unit?.id === 'stone' && /^(?:as|like|than|into)$/.test(spoken(tokens[k - 1]));
};

const elsewhen =
  /\b(?:(?:my|the|our|an?|her|his|their) (?:last|previous|earlier|old|older|former|first) (?:one|batch|bar|bars|recipe|try|soap|card|version|sheet|slip|note)|last (?:time|year|month|week|spring|summer|autumn|fall|winter)|back then|years? ago)\b/;
/** "Last one I did at 8 %", "in June I did it at 8 %", not "one last loaf at 7 %". */
const wasSo =
  /(?<!\b(?:one|a|this|for|next|very) )\b(?:(?:last|previous) (?:one|batch|soap|lot|loaf|go)|(?:one|batch|time|soap) before|in (?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december) (?=(?:i|we|it) ))\b.*\b(?:did|had|was|were|made|took|used|went)\b/;
const crossedOut = /\b(?:crossed|struck|scratched) (?:[a-z]+ ){0,4}(?:out|through)\b/;
const present = /\b(?:now|today|this|so|again|same|want|like|would|should|better|rather|use|as (?:in|with|for))\b/;

/** "My last one had 5 % superfat", "her older card had 8 %" beside a superfat of this one: of another batch. */
function isOfOtherBatch(tokens: readonly Token[], k: number): boolean {
  if (![k - 1, k - 2, k + 1, k + 2].some((at) => isRole(tokens[at], 'superfat')) && !hasSuperfat(tokens, k))
    return false;
  const sentence = inside(tokens, sentenceAt(tokens, k, longestLook));
  const text = sentence.map(spoken).join(' ');
  const behind = tokens
    .slice(k, sentenceAt(tokens, k, longestLook).to)
    .map(spoken)
    .join(' ');
  // "superfat 3 %, 8 % is crossed out": nobody knows of which it is said
  const isLone = sentence.filter((one) => one.t === 'quantity' && one.quantity.dim === 'percent').length === 1;
  const isTold =
    elsewhen.test(text) || wasSo.test(text) || (crossedOut.test(behind) && !/\b(?:wrote|written)\b/.test(text));
  return isLone && isTold && !present.test(text) && !sentence.some(isIngredient);
}

/** A share stands beside the word in another place than at `k`. */
const hasSuperfat = (tokens: readonly Token[], k: number): boolean =>
  tokens.some((one, at) => {
    if (!isRole(one, 'superfat')) return false;
    return [at - 1, at + 1, at + 2].some((near) => {
      const token = tokens[near];
      return near !== k && token?.t === 'quantity' && token.quantity.dim === 'percent';
    });
  });

/** The fat has a share in another place, too. */
const sharedElsewhere = (tokens: readonly Token[], at: number, { meaning }: Name): boolean =>
  tokens.some((one, k) => {
    if (k === at || one.t !== 'name' || one.meaning.kind !== 'fat' || one.meaning.id !== meaning.id) return false;
    return [k - 1, k + 1, k - 2, k + 2].some((near) => {
      const token = tokens[near];
      return token?.t === 'quantity' && token.quantity.dim === 'percent';
    });
  });

const users = /^(?:does|makes|uses|takes|has|does|swears|likes|loves|puts|need|needs|want|wants)$/;
const speakers = /^(?:he|she|they|you|people|everybody|everyone|somebody|someone|says|said)$/;

const hearsay =
  /\b(?:(?:they|people|some|somebody|someone|everybody|everyone|others|books?) (?:all )?says?\b|i (?:was|am) told|i (?:have |ve )?(?:heard|read)|(?:not|no) more than|never more than|(?:i|we) (?:would )?(?:never|dont|wouldnt|rarely|normally|usually|always|try to|like to)? ?(?:go|stay|keep|use|do|put)(?: \S+){0,2} (?:over|above|beyond|under|below|past)|at most|max(?:imum)?)\b/;

/** "They say not more than 15 % castor": a rule, and no share of this recipe. */
function isRule(tokens: readonly Token[], k: number): boolean {
  const span = sentenceAt(tokens, k, longestLook);
  let fats = 0;
  for (let at = span.from; at < span.to; at++) {
    const token = tokens[at];
    if (token?.t === 'quantity' && at !== k) return false;
    if (isIngredient(token) && (token.meaning.kind !== 'fat' || ++fats > 1)) return false;
  }
  return fats === 1 && hearsay.test(inside(tokens, span).map(spoken).join(' '));
}

/** "She uses 40 % olive": of what the post weighs in another place. */
function isOfOthers(tokens: readonly Token[], k: number): boolean {
  if (!users.test(spoken(tokens[k - 1]))) return false;
  const who = spoken(tokens[k - 2]);
  if (/^(?:it|this|that|recipe|bar|soap|batch|mine|blend|one|i|we)$/.test(who)) return false;
  if (/^(?:need|want)s?$/.test(spoken(tokens[k - 1])) && !speakers.test(who)) return false;
  const name = isIngredient(tokens[k + 1]) ? tokens[k + 1] : tokens[k + 2];
  if (!isIngredient(name) || name.meaning.kind !== 'fat') return false;
  const at = tokens.indexOf(name);
  return weighedElsewhere(tokens, at) || sharedElsewhere(tokens, at, name);
}

const shares =
  /^(?:sure|natural|certain|positive|organic|vegan|cotton|happy|done|ready|right|wrong|correct|off|chance|humidity|humid|agree|agreed|cheaper|dearer|faster|effort)$/;
const notOfFat =
  /^(?:people|us|them|makers|soapers|beginners|cases|time|times|days|kids|members|posts|bars|customers|my|our|all|what)$/;

/** "90 % of people say so", "I am 100 % sure", "50 % off in the shop". */
function isShareOfElse(tokens: readonly Token[], k: number): boolean {
  const next = spoken(tokens[k + 1]);
  if (shares.test(next)) return !isIngredient(tokens[k + 2]) && !isIngredient(tokens[k - 1]);
  if (/^(?:is|was|of)$/.test(spoken(tokens[k - 1])) && spoken(tokens[k - 2]) === 'humidity') return true;
  // "my phone is at 5 %"
  const noun = tokens[k - 3];
  const isPhone = noun?.t === 'name' && noun.meaning.kind === 'role' && noun.meaning.id === 'number';
  if (
    spoken(tokens[k - 1]) === 'at' &&
    /^(?:is|was)$/.test(spoken(tokens[k - 2])) &&
    (isPhone || (noun?.t === 'word' && noun.sort === 'everyday' && !ofRecipe.test(noun.text)))
  )
    return true;
  if (next !== 'of') return false;
  const skip = /^(?:the|all|my|our)$/.test(spoken(tokens[k + 2])) ? 3 : 2;
  return notOfFat.test(spoken(tokens[k + skip])) && !isIngredient(tokens[k + skip + 1]);
}

/** Degrees without a unit, of a pot or of a lye. */
const warm = { least: 15, most: 220 } as const;
/** "Oils at 40, lye at 35": both at a figure without a unit. */
function atDegrees(tokens: readonly Token[], { figures }: Signals): readonly number[] {
  const found: number[] = [];
  let [fats, lye] = [false, false];
  for (const k of figures) {
    const token = tokens[k];
    if (k < 2 || token?.t !== 'quantity' || token.quantity.dim !== 'bare') continue;
    const { value } = token.quantity;
    if (value < warm.least || value > warm.most) continue;
    let at = k - 1;
    while (k - at <= 3 && /^(?:about|around|roughly|just|nearly|both)$/.test(spoken(tokens[at]))) at--;
    if (spoken(tokens[at]) !== 'at') continue;
    const before = /^(?:is|was|were|are|both)$/.test(spoken(tokens[at - 1])) ? tokens[at - 2] : tokens[at - 1];
    if (before?.t !== 'name' || isIngredient(tokens[k + 1]) || spoken(tokens[k + 1]) === 'of') continue;
    const isFats = isRole(before, 'total-fats') || /^(?:oils|fats|butters)$/.test(before.text.toLowerCase());
    const isLye = before.meaning.kind === 'alkali' || before.meaning.kind === 'stock';
    if (!isFats && !isLye) continue;
    fats ||= isFats;
    lye ||= isLye;
    found.push(k);
  }
  return fats && lye ? found : [];
}

/** "Oils 45, lye 38, room 19" in a line of its own, where the lye is weighed elsewhere: fats weigh five times their lye. */
function degreesInRow(tokens: readonly Token[], { figures }: Signals): readonly number[] {
  return figures.flatMap((k) => {
    const [oils, sign, lye] = [tokens[k - 1], tokens[k + 1], tokens[k + 2]];
    const values = [k, k + 3].map((at) => bareAt(tokens[at]));
    if (!isRole(oils, 'total-fats') || !isMark(sign, ',/;&+') || !isIngredient(lye)) return [];
    if (lye.meaning.kind !== 'alkali' || !weighedElsewhere(tokens, k + 2)) return [];
    const [least, most] = [Math.min(...values), Math.max(...values)];
    const ends = tokens[k + 4] === undefined || isStop(tokens[k + 4]) || isMark(tokens[k + 4], ',/;&+');
    return ends && least >= warm.least && most <= warm.most && most < mostApart * least ? [k, k + 3] : [];
  });
}
const mostApart = 2.5;
const bareAt = (token: Token | undefined): number =>
  token?.t === 'quantity' && token.quantity.dim === 'bare' ? token.quantity.value : Number.NaN;

const warming =
  /^(?:melt(?:ed|ing)?|cool(?:ed|ing)?|heat(?:ed|ing)?|warm(?:ed|ing)?|come|came|coming|brought|soaped|chilled)$/;

/** "I melted it with the tallow at 65, let everything come down to 45": a temperature without its unit. */
function isWarmth(tokens: readonly Token[], k: number, { quantity: { value, inWords } }: Figure): boolean {
  if (inWords || value < warm.least || value > warm.most || isIngredient(tokens[k + 1])) return false;
  let at = k - 1;
  while (k - at <= 3 && /^(?:about|around|roughly|just|nearly|only)$/.test(spoken(tokens[at]))) at--;
  if (!/^(?:at|to|until|below|under)$/.test(spoken(tokens[at])) || spoken(tokens[k + 1]) === 'of') return false;
  const sentence = inside(tokens, sentenceAt(tokens, k, longestLook));
  return sentence.some((one) => warming.test(spoken(one))) && !sentence.some(isMeasured);
}

/** The tokens with such figures set aside. */
const isShare = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'percent';

export function elsewise(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const aside = (k: number, reason: string): void => {
    const token = tokens[k];
    if (token?.t !== 'quantity') return;
    out ??= [...tokens];
    out[k] = asAside(token, reason);
  };
  const shared =
    (signals.all & signal.percent) !== 0 &&
    signals.figures.some((k) => isShare(tokens[k]) && [k - 2, k - 1, k + 1, k + 2].some((at) => isFat(tokens[at])));
  let counted: number | null = null;
  const fats = (): number => {
    counted ??= weighedFats(tokens);
    return counted;
  };
  /** A name that is none of the recipe. */
  const putWord = (k: number): void => {
    const name = tokens[k];
    if (!name) return;
    out ??= [...tokens];
    out[k] = { t: 'word', from: name.from, to: name.to, text: 'only', sort: 'everyday' };
  };
  /** No ingredient from one token up to another. */
  const putIngredients = ({ from, to }: Span): void => {
    for (let at = from; at < to; at++) if (isIngredient(tokens[at])) putWord(at);
  };
  const count = (k: number, token: Figure): void => {
    if (isUnspoken(tokens[k - 1]) && isUnspoken(tokens[k + 1])) return;
    const acid = forAcid(tokens, k);
    if (acid !== null) {
      aside(k, 'a part of what was said');
      putWord(acid);
    } else if (isDrunk(tokens, k, token)) {
      aside(k, drunk);
      putWord(isIngredient(tokens[k + 1]) ? k + 1 : k + 2);
    } else if (isWarmth(tokens, k, token)) aside(k, 'a temperature');
  };
  const share = (k: number, token: Figure): void => {
    const flake = flakeAt(tokens, k, token);
    const sold = flake === null ? undefined : tokens[flake];
    if (flake !== null && sold) {
      out ??= [...tokens];
      const { from, to } = sold;
      const meaning = { kind: 'role', id: 'purity' } as const;
      out[flake] = { t: 'name', from, to, text: spoken(sold), meaning, how: 'name', meant: 'purity' };
    } else if (isOfOthers(tokens, k)) {
      aside(k, ofOthers);
      putWord(isIngredient(tokens[k + 1]) ? k + 1 : k + 2);
    } else if (saysAround(signals, k, cue.hearsay) && isRule(tokens, k)) {
      aside(k, ruleOfOthers);
      putIngredients(sentenceAt(tokens, k, longestLook));
    } else if (isWaterDiscount(tokens, k)) {
      aside(k, 'a water discount');
      putWord(k + 1);
      putWord(k + 2);
    } else if (isOfOtherBatch(tokens, k)) {
      aside(k, otherBatch);
      for (const at of [k - 2, k - 1, k + 1, k + 2]) if (isRole(tokens[at], 'superfat')) putWord(at);
    } else if (isShareOfElse(tokens, k)) aside(k, 'a share of something else');
  };
  const measured = (k: number, token: Figure): void => {
    // a row: no word beside the figure, and nothing of it tried
    if (isUnspoken(tokens[k - 1]) && isUnspoken(tokens[k + 1]) && !isTried(tokens, k, signals)) return;
    const pack = ownPackOf(tokens, k, token, fats);
    if (pack !== null) {
      aside(k, inStore);
      putWord(pack);
    } else if (isDrunk(tokens, k, token)) {
      aside(k, drunk);
      putWord(isIngredient(tokens[k + 1]) ? k + 1 : k + 2);
    } else if (isMovedBy(tokens, k, token)) aside(k, difference);
    else if (isDifference(tokens, k, token)) {
      aside(k, difference);
      // a fat that is weighed nowhere else is asked about
      if (isIngredient(tokens[k + 2]) && weighedElsewhere(tokens, k + 2)) putWord(k + 2);
    } else if (isOfSoap(tokens, k, signals)) {
      aside(k, soapMade);
      if (isTried(tokens, k, signals)) putIngredients(sentenceAt(tokens, k, longestLook));
    } else if (isTolerance(tokens, k, token)) aside(k, 'a tolerance');
    else if (isOther(tokens, k, token)) aside(k, otherWeight);
    else if (isTelling(tokens, k, token) || isHabit(tokens, k, token, shared)) aside(k, 'told of another time');
  };
  for (const k of signals.figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity') continue;
    if (token.quantity.dim === 'percent') share(k, token);
    else if (token.quantity.dim === 'bare') count(k, token);
    else if (isMeasured(token)) measured(k, token);
  }
  for (const k of [...atDegrees(tokens, signals), ...degreesInRow(tokens, signals)]) aside(k, 'a temperature');
  return out ?? tokens;
}
