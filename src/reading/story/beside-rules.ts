/** The sentences that tell so beside a whole list (`beside-pot.ts`), and what would make something else of each. */
import { packed } from '../columns/columns.ts';
import { otherUse } from '../figures/other-use.ts';
import { plansAhead } from '../taken-back/stance.ts';
import type { Sentence } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, isMeasured, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { rowsBefore } from './tale.ts';

/** Rows of fats outside of a sentence without which there is no list. */
export const leastFats = 2;

/** "Two yoghurt cups" name a vessel, and "two cups of yoghurt" none. */
export const isStuff = (token: Token, k: number, tokens: readonly Token[]): boolean =>
  isIngredient(token) &&
  !(
    /^(?:cups?|cartons?|pots?|tubs?|tins?|mou?lds?|jars?|box(?:es)?|tubes?|cans?|bottles?|trays?|dish(?:es)?)$/.test(
      spoken(tokens[k + 1]),
    ) && spoken(tokens[k + 2]) !== 'of'
  );

/** Words of which one stands in each such sentence. */
export const cues: ReadonlySet<string> = new Set(
  'sisters brothers mums moms mothers aunts aunties grans grannies neighbours neighbors friends cousins gonna planning meaning hoping considering loved liked wanted preferred wished fancied longed dreamed page entry card sheet says said tells told reckons reckoned thought recommends insists wants he she they done bars bar pieces pucks rounds ones cubes hearts squares slices mould mold moulds molds moulded molded left leftover leftovers scraps trimmings shavings ends remains remain over batter balm salve lotion ointment candle candles cream cleaner last leaves takes does makes swaps uses puts adds replaces poured filled lined cut version versions batch run try attempt entry exp experiment one loaf soap recipe hers his theirs people soapers makers folk folks recipes books ago variant shop bought store inci label grate grated shave shaved prefers works thinks has did made drops skips wet fresh weigh weighed variation variations variants versions v tip tips idea ideas alternative alternatives alternatively option options try tried would wouldve might could couldve should shouldve wish only mum mom mother dad father aunt friend neighbour neighbor sister brother teacher others original decided mind bother better idea neither nothing against belongs goes ignore disregard count tomorrows yesterdays mondays tuesdays wednesdays thursdays fridays saturdays sundays another next waiting yesterday earlier previous tempted thinking considered toyed wanted meant planned intended going photo picture beside table bench counter stands standing sits sitting'.split(
    ' ',
  ),
);

const relative =
  '(?:sister|brother|mother|mum|mom|dad|father|aunt|auntie|uncle|gran|granny|grandma|grandmother|neighbou?r|friend|colleague|cousin|teacher|daughter|son|husband|wife|partner|barber|woman|man|lady|girl|guy|bloke|chap|soaper|somebody|someone)';
const vessel =
  '(?:jars?|tubs?|tins?|bottles?|bags?|box(?:es)?|cans?|canister|cupboard|blocks?|packets?|pantry|fridge|larder|drum|bucket)';

export interface Rule {
  readonly reason: string;
  readonly tells: RegExp;
  /** What would make something else of it. */
  readonly unless: RegExp;
  /** One fat elsewhere makes a list. */
  readonly sure?: true;
  /** No ingredient is named there. */
  readonly nameless?: true;
  /** What the next sentence says. */
  readonly next?: RegExp;
  /** The alkali is weighed elsewhere, too: where it is asked for, a size may be meant for the batch. */
  readonly whole?: true;
  /** What the answer says of it, if it is no other batch. */
  readonly says?: string;
  /** It tells of a change, which is none of this pot. */
  readonly settles?: true;
  /** What would make something else of it, behind what tells so. */
  readonly unlessBehind?: RegExp;
  /** What is asked about then. */
  readonly unlessAsked?: RegExp;
  /** What stands before it in its sentence is of something else, or what stands behind it. */
  readonly behind?: true;
  readonly ahead?: true;
  /** By what stands around it, too. */
  readonly holds?: (place: Place) => boolean;
}

interface Place {
  readonly tokens: readonly Token[];
  readonly sentences: readonly Sentence[];
  readonly k: number;
}

const stuff = '(?:balm|salve|lotion|ointment|candles?|body butter|hand cream|polish|scrub|melts|bath bombs?)';
const batch = '(?:version|batch|one|loaf|run|try|attempt|recipe|pot|go)';
/** "I did too" in the next sentence. */
const notSoHere =
  /^(?!(?:and |so |but )*(?:(?:i|we) (?:did|do|have|went|made)\b(?! (?:not|it (?:otherwise|differently))\b)|so (?:did|do) (?:i|we)\b|me too\b|same here\b|mine too\b|this one too\b))/;
/** What follows may be put to what they have: "I add 200 g coconut". */
const notSoEither = new RegExp(
  `${notSoHere.source}(?!(?:[^.?!;:]* )?(?:add|added|adds|plus|also|too|same|as well|beside|besides|instead|more|another|likewise|copied|followed)\\b)`,
);
/** It may be so in this pot, too. */
const likewise =
  /\?|\b(?:same (?:as|again|for|here|now|with)|again|still|this (?:time|one|batch|loaf|pot|soap)|now|today|so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|so (?:did|do|does|have|has) (?:i|we|mine|this)|me too|kept (?:that|it)|did it the same|as (?:then|before)|like (?:this|now|that)|instead|since|too(?= [.,;!]|$| $)|as well|also|therefore|(?:i|we|mine) (?:took|take|used?|put|have|had|has|weighed|went|added|made|did)(?= [^?]{0,16}#))\b/;
const ofOther =
  /\b(?:first|last|previous|earlier|old|older|before(?! (?:i|we|it|they|you|pouring|cutting)\b)|both|hers|his|theirs|her|she|he|they|other)\b/;

/** A batch by its number or letter: "entry 4", "exp. B". */
const numbered =
  /\b(entry|batch|run|try|attempt|version|v|exp|experiment|loaf|soap|recipe|no|nr)(?: (?:no|nr|number))? (?:[.] |# )?(#|[a-f])(?= |$)/g;

/** What a sentence calls a batch by its first label: a kind of label, and a number. */
function labelOf({ tokens, sentences }: Place, k: number): readonly [string, number] | null {
  const sentence = sentences[k];
  if (!sentence) return null;
  for (const match of sentence.text.matchAll(numbered)) {
    const [, of = '', name = ''] = match;
    const kind = /^(?:v|exp)/.test(of) ? of.charAt(0) : 'no';
    if (name !== '#') return [kind, name.charCodeAt(0) - 96];
    const token = tokens[sentence.tokenAt(match.index + match[0].length - 1)];
    if (token?.t === 'quantity' && token.quantity.dim === 'bare') return [kind, token.quantity.value];
  }
  return null;
}

/** The title gives this batch a number, and the sentence tells of one that was before it. */
function isEarlier(place: Place): boolean {
  const { tokens, sentences, k } = place;
  const title = sentences.findIndex((one, at) => one.paragraph === 0 && labelOf(place, at) !== null);
  if (title < 0 || title >= k || isAny(tokens, 0, sentences[title]?.to ?? 0, (_, at) => isRow(tokens, at)))
    return false;
  const [own, other] = [labelOf(place, title), labelOf(place, k)];
  return own !== null && other !== null && own[0] === other[0] && other[1] < own[1];
}
const isRow = (tokens: readonly Token[], k: number): boolean =>
  isIngredient(tokens[k]) && [tokens[k - 1], tokens[k + 1]].some(isMeasured);

/** "2 milk" has its figure in its name. */
const holdsFigure = (token: Token): boolean => token.t === 'name' && /\d/.test(token.text);

/** Every name in it is that of a vessel, and no figure weighs anything: "moulds = margarine tubs". */
const isOfVessels = ({ tokens, sentences, k }: Place): boolean => {
  const { from, to } = sentences[k] ?? { from: 0, to: 0 };
  return (
    isAny(tokens, from, to, isIngredient) &&
    !isAny(
      tokens,
      from,
      to,
      (one, at) => isStuff(one, at, tokens) || (isMeasured(one) && one.quantity.dim === 'mass') || holdsFigure(one),
    )
  );
};

/** The list stands before it. */
const isBehindList = ({ tokens, sentences, k }: Place): boolean =>
  rowsBefore(tokens, sentences[k]?.from ?? 0).length >= leastFats;

/** What another batch or recipe has, told behind the list, unless this pot has it, too. */
const ofAnother = {
  behind: true,
  // "one corner was crumbly??" wonders, and asks nothing
  unless:
    /(?<!\? )\?(?! \?)|\b(?:super ?fat|sf|discount)\b|\b(?:was|is) (?:it|that|this)\b.*\?|\b(?:did i|how|why|what|should|right|ok|okay|fine|too (?:much|little))\b[^?]{0,20}\?/,
  next: notSoHere,
  unlessBehind: likewise,
  holds: isBehindList,
  settles: true,
} as const;

/** "I've done coffee soap before". */
const doneBefore =
  /\b(?:i|we|ive|weve) (?:have |had |ve )?(?:once )?(?:done|made|did|cooked|tried) (?:(?!this\b|it\b)[a-z@]+ ){0,4}(?:soaps?|bars?|batch(?:es)?|loa(?:f|ves)) (?:once )?before\b/;
const isOfDoneBefore = ({ sentences, k }: Place): boolean => doneBefore.test(sentences[k - 1]?.text ?? '');

/** What was said may have been taken. */
const notTaken = new RegExp(
  `${notSoHere.source}(?!(?:so |and |then |but )*(?:(?:i|we) (?:ve |have )?(?:took|take|used?|put|went|did|made|follow\\w*|listened|changed|weighed|added)|thats what|that is what|(?:he|she) (?:is|was)|in it went)\\b)`,
);

/** All that the sentence weighs is alkali, of which the list has another weight. */
const saysOtherLye = ({ tokens, sentences, k }: Place): boolean => {
  const { from, to } = sentences[k] ?? { from: 0, to: 0 };
  const isLye = (token: Token): boolean => isIngredient(token) && token.meaning.kind === 'alkali';
  return (
    !isAny(tokens, from, to, (one) => isIngredient(one) && !isLye(one)) &&
    rowsBefore(tokens, from).some(({ at }) => isLye(tokens[at] as Token))
  );
};

/** It weighs fats that the list has none of, and neither alkali nor water. */
const weighsMore = ({ tokens, sentences, k }: Place): boolean => {
  const { from, to } = sentences[k] ?? { from: 0, to: 0 };
  const listed = new Set(
    rowsBefore(tokens, tokens.length).flatMap(({ at, id }) => (at < from || at >= to ? [id] : [])),
  );
  const isOther = (one: Token): boolean =>
    isIngredient(one) && (one.meaning.kind !== 'fat' || listed.has(thingOf(one)));
  return isAny(tokens, from, to, isFat) && !isAny(tokens, from, to, isOther);
};
const isOfMoreFat = (place: Place): boolean => weighsMore(place) && isBehindList(place);
/** Who is spoken of was named before: the list may be theirs. */
const isOfWhoseList = ({ sentences, k }: Place): boolean => {
  const [who] = new RegExp(`\\b${relative}\\b`).exec(sentences[k]?.text ?? '') ?? [];
  return who !== undefined && sentences.slice(0, k).some(({ text }) => text.includes(who));
};
const takes = '(?:adds?|puts?|uses?|takes?|stirs?|has|had|likes?|says?|reckons?|thinks?|recommends?|swears?|insists?)';

const othersTake = new RegExp(
  `^(?:but |and |now )?(?:(?:my|our|the|a|an|some|most|other|many) (?:[a-z]+ ){0,2}${relative}s?(?: - ?in - ?law)?|(?:some|most|other|many) (?:people|soapers|makers|folks?)|people|others|the original(?: recipe)?) (?:(?:always|usually|often|just|also|even) )*${takes}\\b`,
);

/** "My sister in the north puts 700 g of lard in hers". */
const inTheirs = `^(?:but |and |now )?(?:(?:a|an|my|the|our|some|one) )?(?:[a-z]+ ){0,2}${relative}(?: (?:from|in|at) (?:the )?[a-z]+| (?!who\\b|and\\b|that\\b)[a-z]+)? (?:(?:always|usually|just|simply) )*(?:takes|uses|puts|adds|pours|has) [^?.]{0,40} (?:in|to|into|with) (?:hers|his|theirs)\\b`;

/** The rows of the sentence, and whether the list has one of the same. */
function rowsIn({ tokens, sentences, k }: Place) {
  const { from, to } = sentences[k] ?? { from: 0, to: 0 };
  const isOwn = ({ at }: { readonly at: number }): boolean => at >= from && at < to;
  const rows = rowsBefore(tokens, tokens.length);
  const listed = new Set(rows.flatMap((row) => (isOwn(row) ? [] : [row.id])));
  return rows.filter(isOwn).map(({ at, id }) => ({ isOfFat: isFat(tokens[at]), isListed: listed.has(id) }));
}

/** What it weighs are fats that the list has none of. */
const weighsOnlyMore = (place: Place): boolean => {
  const rows = rowsIn(place);
  return rows.length > 0 && rows.every(({ isOfFat, isListed }) => isOfFat && !isListed);
};

/** Of the fats that it weighs the list has none. */
const weighsOtherFats = (place: Place): boolean => {
  const fats = rowsIn(place).filter(({ isOfFat }) => isOfFat);
  return fats.length > 0 && fats.every(({ isListed }) => !isListed);
};

/** A list stands around it. */
const listsElsewhere = ({ tokens, sentences, k }: Place): boolean => {
  const { from, to } = sentences[k] ?? { from: 0, to: 0 };
  const ids = rowsBefore(tokens, tokens.length).flatMap(({ at, id }) =>
    isFat(tokens[at]) && (at < from || at >= to) ? [id] : [],
  );
  return new Set(ids).size >= leastFats;
};

const meaning =
  '\\b(?:(?:was|were|am|im|had been) (?:really |just |first )*(?:going|gonna|about|planning|tempted|thinking|meaning|considering|toying)|wanted|meant|planned|intended|thought|wished|considered|toyed|going to|gonna|about to|thinking of)\\b';
/** Of what was meant to go in and was no good. */
const wasted =
  '(?:(?:it|that|they|which|the lot) )(?:(?:had|has|was|were|all|just|then|sadly|unfortunately) )*(?:(?:went|gone|landed|ended up) (?:straight )?(?:in|into|on|to) (?:the )?(?:bin|compost|rubbish|trash|garbage|dustbin|chickens|birds)|(?:smelled|smelt|tasted|gone|went|turned|turned out|was|were) (?:a bit |so |quite |all |rather )*(?:off|rancid|bad|funny|mouldy|moldy|spoilt|spoiled|stale))|(?:binned|chucked|threw) (?:it|that|them|the lot)';
const noLonger =
  '(?:no longer(?! (?:has|have|had|is|weighs?|than|in the jar)\\b)|(?:not|nt) any ?more|(?:i ?m |am |we ?re |are )?not (?:now|going to|doing (?:it|that|so))|(?:isnt|its not|not) happening|not after all)';
const dropping = `(?:${wasted}|${noLonger}|decided (?:against|not to)|changed my mind|(?:didnt|did not|couldnt be|not) bother(?:ed)?|thought better|(?:dropped|scrapped|gave up|abandoned|binned) (?:on )?(?:the|that) (?:idea|plan|thought)|(?:but|then|and) (?:in the end )?(?:i |we )?(?:didnt|did not|havent|never did)(?! (?:weigh|have|get|find|reach|realise|notice))|resisted|opened (?:neither|none|it not))\\b`;
/** What was not taken out after all, or not done apart, stays. */
const stays =
  /\?|\b(?:instead|in (?:its|their) place|went in(?! the (?:bin|compost|rubbish|trash|garbage)\b)|only half|some of it|throw(?:ing)?|remov\w*|(?:leave|leaving|left|take|taking) (?:it |that |them |out )?(?:the )?(?:#|out)|skip\w*|omit\w*|without|swap\w*|replac\w*|reduc\w*|separately|together|at once|at trace|at the end|less)\b/;
const otherDay =
  '(?:next(?! to\\b)|another|other|different|tomorrows?|yesterdays?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|weekends?|second|later)';
const ofOtherDay = `\\b(?:belongs? (?:to|in)|(?:is|are|was|were|thats|its|meant|reserved|kept|waiting|set aside|put aside) (?:only |just |all )*(?:for |of )?|goes? (?:in|into|to)|will go (?:in|into)) ?(?:the |a |my |our )*${otherDay}(?: (?:batch|soap|one|loaf|pot|lot|bar|week|recipe|project)s?)?(?= (?:$|[-,.;:!)]|and|so|not|ignore|please|dont)| $)`;
const ignoring =
  '\\b(?:ignore|disregard|dont count|do not count|doesnt count|does not count|forget) (?:it|that|them|those|this)?|\\bnothing to do with (?:it|this)\\b|\\bnot (?:part of|in|for) (?:this|it|the list)\\b';

/** A batch that a log tells of before the one of the list. */
const otherLoaf =
  /\b(?:yesterdays?|the other|other|previous|last (?:nights?|weeks?|months?)|earlier) (?:[a-z@]+ )?(?:loaf|batch|soap|bars?|pot|one)\b|^(?:[-*•] )*yesterday (?:[:–-]|i (?:made|did|cooked|poured))/;
const madeAnew =
  /\?|\b(?:same|again|like|reused|remelt\w*|rebatch\w*|left ?overs?|scraps|into (?:this|todays?)|this one|so (?:is|was|has) this)\b/;
const isOfOtherLoaf = (place: Place): boolean => {
  const { sentences, k } = place;
  const [own, before] = [sentences[k]?.text ?? '', sentences[k - 1]?.text ?? ''];
  const told = /^[([]/.test(own) && !otherLoaf.test(own) ? before : own;
  return otherLoaf.test(told) && !madeAnew.test(told) && weighsOtherFats(place);
};

/** "My neighbour takes 110 g, but that's for her 800 g of lard", "Auntie's 60 g is for 450 g". */
const theirPair = new RegExp(
  `\\b${relative}s?(?: ?['’]? ?s)? (?:(?:always|usually|just|only|recipe|own|figure|lye) )*(?:(?:takes?|took|uses?|used|puts?|has|had|needs?|does|did|makes?|made|with) (?:in )?)?(?:about |her |his |their )*# (?:(?:of )?(?:the )?@ )?[^?#@]{0,30}\\b(?:for|with)(?: (?:her|his|their|own|only|just|about|a|of))* #`,
);

export const makeRules = (): readonly Rule[] => [
  {
    reason: 'of another recipe',
    tells: theirPair,
    sure: true,
    unless:
      /\?|\b(?:(?:so|and) (?:(?:today|now|then|instead) )?(?:i|we) (?:did|took|used?|put|made|went|weighed|add|added)|(?:i|we) (?:did|do|took|made|use|used|put|went|take)|me too|same (?:as|for|here)|thats what|mine|half|double|twice|times)\b/,
    next: notTaken,
    settles: true,
  },
  {
    reason: 'of another batch',
    tells: /^[([]|\b(?:yesterdays?|other|previous|last|earlier)\b/,
    unless: madeAnew,
    holds: isOfOtherLoaf,
    whole: true,
    settles: true,
  },
  {
    reason: 'thought of, and not put in',
    tells: new RegExp(`${meaning}[^?]*\\b${dropping}`),
    ahead: true,
    unless: stays,
    holds: weighsOnlyMore,
    settles: true,
  },
  {
    reason: 'thought of, and not put in',
    tells: new RegExp(`^(?:first |originally )?(?:i |we )?${meaning}`),
    next: new RegExp(`^(?:but |and |then |so |in the end |, |i |we |ive |have |am |im )*${dropping}`),
    unless: stays,
    holds: weighsOnlyMore,
    settles: true,
  },
  {
    reason: 'of another batch',
    tells: new RegExp(
      `${ofOtherDay}|${ignoring}(?= |$)(?=.*\\b(?:photo|picture|beside|next to|table|bench|counter|also)\\b)|\\b(?:photo|picture|beside|next to|table|bench|counter|also)\\b.*${ignoring}`,
    ),
    unless:
      /\?|\b(?:went in|added|put in|used|poured|took|instead|both|half|some of|rest|superfat|after(?:wards)?|cook|cooked|trace|at the end)\b/,
    holds: weighsOnlyMore,
    settles: true,
  },
  {
    reason: 'of another batch',
    tells: /\b(?:photo|picture|beside|next to|table|bench|counter|stands?|standing|sits|sitting|see|also|theres)\b/,
    next: new RegExp(
      `^(?:(?:but|and|please|so|,) )*(?:(?:(?:it|that|they|those|this|which) )?${ofOtherDay}|${ignoring})`,
    ),
    unless:
      /\?|\b(?:went in|added|put in|used|poured|took|instead|both|half|some of|rest|superfat|after(?:wards)?|cook|cooked|trace|at the end)\b/,
    holds: weighsOnlyMore,
    settles: true,
  },
  {
    reason: 'planned for another time',
    tells:
      /\b(?:would|wouldve|might have|could have|couldve|should have|shouldve) (?:really |maybe |also |just |# (?:of )?@ )*(?:be(?:en)? (?:nice|good|better|lovely|great|useful)|help(?:ed)?|ma(?:k|d)e|do(?:ne)?|have (?:put|used|added|taken|been|helped|made)|put|used|added|taken|work(?:ed)?)\b|\b(?:i|we) wish\b|\bif only\b/,
    unless:
      /\b(?:so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|but (?:i|we) (?:did|put|used|added|went)|(?:i|we) (?:did|put|added|used|went)|went in|instead|is in|are in|already|anyway)\b/,
    holds: isOfMoreFat,
    settles: true,
  },
  {
    reason: 'a wish that was none of this pot',
    says: 'I left out what was only wished for.',
    tells:
      /^(?=.*\b(?:but|though|sadly|alas|none|stayed|too (?:dear|expensive|costly)|sold out)\b).*\b(?:(?:(?:would|might|id|wed|d)(?: really| so)* have|wouldve|mightve|idve|wedve)(?: really| so)* (?:loved|liked|wanted|preferred)|(?:i|we) (?:really )?(?:wished for|fancied|longed for|dreamed of))\b/,
    unless:
      /\?|\b(?:more than|less than|so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|but (?:i|we) (?:did|put|used|added|took|went|only)|(?:i|we) (?:did|put|added|took)|went in|instead|is in|are in|already|anyway|half|some|part)\b/,
    holds: weighsMore,
    settles: true,
  },
  {
    reason: 'said by somebody else',
    tells: othersTake,
    unless: /\?|\b(?:so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|(?:i|we) (?:did|do|too)|me too)\b/,
    next: /^(?:but |well ,? ?)?(?:not (?:in|for|with) (?:me|my|mine|ours?)\b|(?:i|we) (?:dont|do not|wont|never|refuse)\b|no thanks\b|mine (?:is|has|takes)\b)/,
    holds: weighsMore,
    settles: true,
  },
  {
    reason: 'said by somebody else',
    tells: othersTake,
    unless:
      /\?|\b(?:so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|(?:i|we) (?:(?:only|just|actually|myself) )*(?:did|do|put|added|used?|too|went|took|take|have|had|gave|stirred|poured)|(?:i|we)(?: (?:only|just|actually|myself))*(?= @ #)|mine (?:has|takes|is)|me too|and (?:i|we)|in (?:mine|ours|this)|to (?:mine|ours|this)|instead|again|as (?:always|ever|usual)|(?:he|she|they) (?:(?:had|has|have|just|also) )*(?:put|added|poured|tipped|threw) # (?:of )?(?:the )?@ in(?! (?:hers|theirs|his|her|their)))\b/,
    next: notSoHere,
    holds: (place) => isOfMoreFat(place) && !isOfWhoseList(place),
    settles: true,
  },
  {
    reason: 'planned for another time',
    tells: plansAhead,
    unless: /\?|\b(?:today|this time|now|already|(?:i|we) (?:did|took|used|made|went|have|had|put|chose))\b/,
    holds: isBehindList,
    settles: true,
    unlessAsked:
      /\b(?:variations?|variants?|versions?|ideas?|options?|alternatives?|then|that (?:one|way)|v ?#|with (?:that|it)|the (?:second|other) one)\b/,
  },
  {
    reason: packed,
    tells:
      /\b(?:mou?lds?|mou?lded in|(?:poured|went|filled|ladled|spooned|glopped|scooped|cut|set) (?:it |them |that |all )*(?:in|into|out of) (?:the|a|an|my|our|old|some|two|three|four|six|eight|#|@)|filled|lined)\b/,
    behind: true,
    unless: /\?|\b(?:from|instead|melted|weighed|added|empty|emptied|used up|last of|rest of)\b/,
    holds: isOfVessels,
  },
  {
    reason: 'what the label says',
    tells: /^(?:the |on the |for the )?(?:inci|label)(?: (?:list|label|names?|says|reads|text))* ?[:=]/,
    behind: true,
    unless: /[?#]/,
  },
  {
    reason: 'what came out of the mould',
    tells:
      /\b(?:left ?overs?|scraps|trimmings|shavings|off ?cuts|ends|crumbs) (?:of (?:it|them|the loaf) )?[:=,-]|\b(?:left ?over|spare|extra|excess|surplus|remaining) (?:batter|soap|dough|paste)\b|\b(?:rest|remainder|remains|what (?:was|is) left|last bit|left over|bit|ladle|cup) of the (?:batter|soap|dough|paste)\b/,
    behind: true,
    unless: /\?|\b(?:want|need|should|shall|would|short|instead|put back|stirred in|threw away|lye|fats?|oils?)\b/,
    nameless: true,
  },
  {
    reason: otherUse,
    tells: new RegExp(
      `^(?:for|from) (?:the|my|a|some) (?:[a-z]+ )?${stuff} (?:(?:i|we) )?|\\b(?:made|poured|cooked|did) (?:(?:some|a few|two|three|#|…) )?(?:[a-z]+ )?${stuff}\\b[^?]*\\b(?:rest|remains|what was left) of the @|\\b(?:made|cooked|did|poured) (?:a |some |one )?(?:batch|pot|tin|jar|lot|bit) of (?:[a-z]+ )?${stuff}\\b|\\b(?:recipe|one) (?:on|from) the (?:next|other|facing|same|back) (?:page|side|card|leaf) (?:takes|has|uses|needs|calls for|wants)\\b`,
    ),
    behind: true,
    unless:
      /\?|\b(?:ladled|scooped|out of (?:it|the|that|this)|from the (?:mix|melt|pot|batch|batter|oils|soap)|of that|stirred (?:it|that) in|into the soap|to the soap|in the soap|both|back|same pot|poured (?:it|that) in|instead|lye)\b/,
  },
  {
    reason: 'of another recipe',
    tells:
      /\b(?:version|variant|recipe|one) (?:is |stands )?(?:on|at|over) the (?:back|reverse|next|other|facing)\b(?=[^?]*#)/,
    behind: true,
    unless: /\?|\b(?:instead|this (?:one|time)|i (?:only |just )?(?:did|made|used|took)|today)\b/,
    holds: isBehindList,
  },
  {
    reason: 'how much a wash takes',
    tells:
      /\b(?:grate|grated|shave|shaved) # (?:of (?:it|this|that|the (?:soap|bar)|a bar) )?(?:in|into|with|and) (?:# |hot |warm |boiling )/,
    behind: true,
    unless: /\?|\b(?:lye|then add|oils?|fats?|beeswax)\b/,
  },
  {
    reason: 'of another batch',
    tells: new RegExp(
      `(?:\\b(?:the|my|our)|^(?:and |but )?) ?(?:very )?(?:first|last|previous|earlier|old|older|1st) ${batch} (?:(?:(?:in|on|of|from) (?:[a-z]+ ){1,2}|(?:(?:[a-z]+|#) (?:days?|weeks?|months?|years?)|#) ago |last [a-z]+ ))?(?:(?:i|we) (?:ever )?(?:made|did|tried) )?(?:had|was|used|took|contained|got|came|went|made|gave)\\b|\\b(?:the|my|our) ${batch} before (?:this (?:one )?|that (?:one )?|it )?(?:had|was|used|took|contained|got)\\b`,
    ),
    ...ofAnother,
    unlessAsked: ofOther,
  },
  {
    reason: 'of another batch',
    tells:
      /(?:^|[:,;] )(?:and )?(?:entry|batch|run|try|attempt|version|v|exp|experiment|loaf|soap|recipe|no|nr)(?: (?:no|nr|number))? (?:[.] |# )?(?:#|[a-f]) (?:(?:was|had|used|took|contained|got|came|went|set|has|is|overheated|turned|never|(?:i|we) (?:never|never even)) )/,
    ...ofAnother,
    unlessAsked: ofOther,
    holds: isEarlier,
  },
  {
    reason: 'of another batch',
    tells: doneBefore,
    ...ofAnother,
    unlessAsked: ofOther,
    whole: true,
  },
  {
    reason: 'of another batch',
    tells: /^[([]/,
    ...ofAnother,
    unlessAsked: ofOther,
    holds: (place) => isBehindList(place) && isOfDoneBefore(place),
    whole: true,
  },
  {
    reason: 'of another batch',
    tells:
      /(?:^|[,;:] )(?:and |but )?(?:on )?the (?:page|entry|card|sheet|line) before(?: (?:this(?: one)?|that|it))?\b(?! (?:i|we) (?:pour|mix|add|start))/,
    ...ofAnother,
    unlessAsked: ofOther,
    whole: true,
  },
  {
    reason: 'of another recipe',
    tells:
      /^(?:but |and )?(?:he|she|they) (?:(?:always|usually|just) )*(?:used?|uses|took|takes?|puts?|had|has|have|needs?|needed) # (?:of )?@(?=[^?]*\b(?:for|in|on) (?:(?:her|his|their) (?:own )?(?:lot|batch|pot|soap|recipe|loaf|fats|oils|bars)|hers|theirs)\b)/,
    ...ofAnother,
    unlessAsked: ofOther,
    whole: true,
  },
  {
    reason: 'said by somebody else',
    tells: new RegExp(
      `^(?:but |and |now )?(?:(?:a|an|my|the|our|some|one) )?(?:[a-z]+ ){0,2}${relative}(?: (?:at|from|in) [a-z]+| next door)? (?:(?:always|just|still|even) )*(?:says?|said|tells?|told|reckons?|reckoned|thinks?|thought|recommends?|recommended|insists?|wanted|wants) (?:(?:me|us|to|that|i|we|it|should|must|need|needs|take|use|put|is|was|be|about|on|for|at least|in|[,:"“]) )*# (?:of )?@`,
    ),
    ...ofAnother,
    unless:
      /\?|\b(?:so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|and (?:i|we)|thats what|(?:i|we) (?:did|do|took|used|put|went|made|follow\w*|listened|have|had)|(?:he|she) (?:is|was) right|went in|is in)\b/,
    next: notTaken,
    unlessAsked: /\b(?:he|she|his|her|they|which|who)\b/,
    holds: (place) => isBehindList(place) && saysOtherLye(place),
    whole: true,
  },
  {
    reason: 'of another recipe',
    tells:
      /\b(?:the|a) (?:shop|bought|store|supermarket|commercial|factory|market) (?:bought )?(?:version|one|kind|sort|bar|soap|stuff) (?:is|was|has|had|contains|uses)\b/,
    ...ofAnother,
  },
  {
    reason: 'of another recipe',
    tells: new RegExp(
      `^(?:but |and |now )?(?:my|our|the|a) (?:[a-z]+ ){0,2}${relative}(?: ?'? ?s)? (?:recipe|version|one) (?:takes|took|uses|used|has|had|wants|calls for)\\b|${inTheirs}|^(?:some|many|most|other) (?:people|soapers|makers|folks?|recipes|books?) (?:(?:also|even|just|like to) )*(?:swap|use|add|leave|put|take|replace|do|skip|say|have)\\b|\\b(?:years?|months?) ago (?:i|we) (?:made|did|cooked) (?:one|some|an?|a (?:batch|loaf|pot)) (?:with|of|from)\\b`,
    ),
    ...ofAnother,
    unlessAsked: ofOther,
  },
  {
    reason: 'of another recipe',
    tells: new RegExp(inTheirs),
    ...ofAnother,
    next: notSoEither,
    unlessAsked: ofOther,
    holds: (place) => weighsOnlyMore(place) && listsElsewhere(place),
    whole: true,
  },
  {
    reason: 'of another recipe',
    tells: new RegExp(
      `^(?:but |and |now )?(?:a|an|my|the|our|some|one) (?:[a-z]+ ){0,2}${relative} (?:(?:always|usually|just|simply) )*(?:makes|does|did|made|cooks) (?:hers|his|theirs) (?:with|from|of|out of)\\b`,
    ),
    ...ofAnother,
    unlessAsked: ofOther,
  },
  {
    reason: 'what a bar weighs',
    tells:
      /\b(?:bars?|pieces?|pucks?|rounds?|ones|cubes?|hearts?|squares?|slices?)\b[^?]*(?:\b(?:at|of|about|only|just|weigh|weighs|weighed) #|: #)|# (?:wet|fresh|when poured|when cut)\b|\bwhen (?:poured|cut|fresh|wet) they (?:were|weighed|had) #/,
    unless:
      /\?|\b(?:want(?! to (?:label|sell|wrap|weigh|know))|need|should|shall|would|aim|plan|add|added|put|more|extra|instead|from|out of|total|altogether|in all|fats?|oils?|lye|batch|recipe|each bar (?:has|holds|contains)|scale|short|not|missing)\b/,
    nameless: true,
    whole: true,
  },
  {
    reason: packed,
    tells: /\bmou?lds?\b[^?]*\b(?:holds?|held|takes?|took|made for|fits?|is for|are for)\b[^?#]{0,20}#/,
    unless:
      /\?|\b(?:want|need|should|shall|would|scale|resize|adjust|add|added|more|instead|oils?|fats?|lye|recipe|half|double|doubled|times)\b/,
    nameless: true,
    whole: true,
  },
  {
    reason: 'what is left of a pack',
    tells: new RegExp(
      `\\b(?:(?:theres|there is|there are|i have|ive|ive got|i still have|still|left in|left over|leftover|remains?|remaining)\\b[^?]*#[^?]*\\b${vessel}|${vessel}[^?#]{0,14}# )(?=.*\\b(?:mini batch|leftovers|for the next|next (?:one|batch|month|time|week)|salad|cooking|frying|another (?:soap|batch|day|time|one)|weekend|later|some day|order more)\\b)`,
    ),
    unless:
      /\?|\b(?:only|just|so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we) (?:used|use|took|take|put)|short|instead|poured|put in|added|went in|weighed|was|were|had|(?:into|in) (?:it|this|the (?:pot|soap|mix)))\b/,
    whole: true,
  },
  {
    reason: otherUse,
    tells:
      /\b(?:in (?:one|another|the other|a separate|a second|the second|the small|a small)(?: (?:pot|pan|bowl|saucepan))?|(?:the|my) (?:other|second|small) (?:pot|pan|bowl|saucepan) (?:had|has|held|got)|separately|on the side)\b(?=.*\b(?:balm|salve|lotion|ointment|candles?|body butter|hand cream|lip balm|polish)\b)/,
    unless:
      /\?|\b(?:ladled|scooped|out of (?:it|the|that)|from the (?:mix|melt|pot|batch)|of that|stirred (?:it|that|in)|into the soap|to the soap|in the soap|both|back|same pot|poured (?:it|that) in)\b/,
  },
  {
    reason: 'said by somebody else',
    tells: new RegExp(
      `^(?:but |and |now )?(?:a|an|my|the|our|some|one) (?:[a-z]+ ){0,2}${relative}(?: (?:(?:i|we) know|of mine|at work|next door|from [a-z]+|in [a-z]+))* (?:(?:always|usually|just|simply|also) )*(?:leaves|takes|uses|does|makes|swaps|replaces|puts|adds|drops|skips|prefers|works|has|thinks|did|made)\\b`,
    ),
    unless:
      /\?|\b(?:same as|like (?:me|mine|us)|(?:in|to|into|from) (?:my|our|the|this) (?:pot|soap|jug|mix|bowl|batch|lye|oils)|before (?:i|we)|so (?:(?:today|now|then|instead|this time|yesterday) )?(?:i|we)|me too|(?:i|we) (?:too|also|did the same)|(?:her|his|their) recipe)\b/,
    next: /^(?:but |so |and |well , |as for me , )*(?:(?:mine|ours) (?:stays|stayed|is|was|has been)(?: (?:exactly|just))* (?:as|like) (?:written|it (?:is|stands)|listed|above|the list|in the list)|(?:i|we) (?:(?:have|always|just|myself) )*(?:kept|keep|stuck|stick|stayed|stay|went|go|left|held) (?:it )?(?:to|with|by|as) (?:(?:the|my|what|is|it|was) )*(?:list|recipe|above|written|listed|plan|one above)|(?:i|we) (?:didnt|did not|dont|do not|never do|never did|wouldnt|havent)(?= [.,;!]|$| $))/,
    settles: true,
  },
  {
    reason: 'of another batch',
    tells:
      /\b(?:last (?:year|spring|summer|autumn|winter|christmas)|years ago|back then|two years ago|the year before)\b[^?]{0,12}\b(?:i|we) (?:made|did|cooked|had)\b[^?]*\b(?:nothing (?:else|but)|only|alone|pure|plain|no other|came out|turned out)\b/,
    unless: /\?|\b(?:same|again|as now|as today|like now|this recipe|this one|still|since then|ever since)\b/,
    settles: true,
  },
];
