/**
 * What went into the pot was not what the list says, in whatever words: there was less of a fat and another one filled
 * it up, the tub held the other alkali, one fat was left away, oils were taken out before the lye, something without a
 * label stood in, more lye came by the spoon, all of it was doubled. Nets rather than rules: what one of them catches is
 * asked about, and what tells of another batch, a plan or a near miss passes through.
 */

import { rowsBefore } from '../story/tale.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { isAny, isFat, isIngredient, massOf } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { isSmallTalk } from './small-talk.ts';

interface Net {
  /** Said in one sentence. */
  readonly tells: RegExp;
  /** Said there, in the two sentences before or in the one behind. */
  readonly beside?: RegExp;
  /** What makes nothing of it: in the sentence, and around it. */
  readonly unless?: RegExp;
  readonly undone?: RegExp;
  /** Told whatever else was heard in the sentence. */
  readonly always?: boolean;
  /** Nothing more is weighed behind it. */
  readonly below?: boolean;
}

const any = (words: string): string => `(?:${words.trim().replace(/\s+/g, '|')})`;
const kin = any(relations);
/** Another batch, somebody else, nobody yet. */
const elsewhere = new RegExp(
  `\\?|\\b(?:for|as a) comparison\\b(?! (?:to|with)\\b)|^comparison :|\\b(?:if|would(?!nt| not (?:thicken|trace|come|set|mix|go|get|work))|could(?! be anything| not be)|might have|next (?:time|batch|one)|last (?:time|batch|week|month|years?|spring|summer|autumn|winter|one)|previous|earlier|once(?! (?:(?:the|its?|all|everything|i|we|that|this|my)\\b|[#@]))|some ?day|(?:want|like|hope|love) to try|usually|normally|always|nearly|almost|about to|thought (?:about|of)|tempted|considered|(?:another|other|first|second|third) (?:batch|soap|recipe|time|go|try|attempt|one)|(?:he|she|they) (?:uses?|takes?|makes?|puts?|likes?|swears?|wanted|offered|will|ll)|(?:my|our) ${kin} (?:[a-z]+ )?(?:takes|uses|makes|does|has|puts|swears|says|thinks)|hers|his|(?:my )?old one)\\b`,
);
const put = any(
  'put used took added tipped poured threw gave weighed melted stirred dissolved sprinkled dropped dumped',
);
const oils = '(?:oils?|fats?)\\b';
const takes = any(
  'took taken dipped ladled scooped spooned decanted drew drained siphoned skimmed removed lifted weighed set put kept held saved poured tipped',
);
const part =
  '(?:#|…|S|V|some|half|third|quarter|part|most|lot|bit|(?:a|two|three|few|couple of) (?:cups?|mugs?|jars?|ladles?|pints?|litres?|glass|bowl|cupfuls?|ladlefuls?)|cups?|pint|mug|jarful|ladleful|bowlful|cupful)';
const away =
  '(?:out|off|aside|away|back|by|fridge|freezer|(?:in|into|to) (?:a|an|the|another|my|her) (?:[a-z]+ )?(?:jar|tub|jug|bottle|bucket|bowl|tin|box|pan|mou?ld|fryer|cup|glass)|behind|for (?:next|another|my|her|his|our|candles?|later|the)|before (?:i|we|anyone|anybody) noticed)';

/**
 * `F` a fat that is weighed, `N` one that is not, `G` one that was taken out, `L` the alkali of the list, `K` the other one, `X` what else has a
 * name; `S` a figure below the weight of a fat that is named in the sentence or right before it, `V` a volume, `P` a share.
 */
const made = (): readonly Net[] => [
  // there was less of it, and something else
  {
    tells: new RegExp(
      `^(?=.*F)(?=.*S)(?=.*\\b${any('ran run dry end ended only out more drop finished empty emptied gave last lacking missing rest remainder difference remaining until till truth squeezed drained scraped bottom short reached enough all had then stopped nothing held quit gap bridged completed')}\\b)`,
    ),
    beside: /N|\b(?:rest|remainder|difference|filled|topped|made up|make up)\b/,
    unless:
      /\b(?:left(?: ?over)?|never|afterwards|still (?:have|has)|salad|cooking|frying|bars?|wrapped|each|per|usual|another one behind)\b/,
  },
  {
    tells:
      /\b(?:rest|remainder|difference|lacking|missing|shortfall|gap|remaining (?:S|#|…))\b[^.?]{0,40}\bN\b|\bN\b[^.?]{0,30}\b(?:rest|remainder|difference|missing|shortfall|gap|other (?:S|#|…))\b|\b(?:made|filled|topped) (?:[a-z]+ ){0,2}(?:up )?(?:the |it |that )?(?:S |# |… )?(?:up )?(?:with|by|from|out of) (?:[a-z]+ ){0,3}N\b|\bN (?:oil )?(?:did|had to do|has to do|took (?:over|care)|went on top|joined)\b|\b(?:bridged|completed|rounded off|patched) (?:it|that|this|them) with (?:[a-z]+ )?N|\bgood thing [a-z]+ (?:had|have) (?:[a-z]+ )?N|\bfor the (?:gap|shortfall)\b/,
    beside: /F/,
    unless: /\b(?:mou?ld|trace|grease[ds]?|lining|scent|colou?r|swirl)\b/,
    always: true,
  },
  // a fat that weighs nothing beside one with less than its weight
  {
    tells: /N/,
    beside: /^(?=.*F)(?=.*S)(?=.*N)/,
    unless:
      /\b(?:left(?: ?over)?|afterwards|salad|cooking|frying|bars?|each|per|usual|usually|never|seeds?|for next|mou?ld|grease[ds]?|scent|colou?r|swirl|trace|sell|offered|none|saving|no thanks|(?:take|took|leave|left) (?:it|that) out|(?:no|not|like|than|or|of|without|wanted|for) (?:(?:the|any) )?N|N (?:was|is) (?:rancid|too|off|gone|out))\b/,
    undone: /\b(?:left(?: ?over)? for|another one behind|kept to the list|at first)\b/,
    always: true,
  },
  // the other alkali
  {
    tells: /K/,
    unless:
      /\bK (?:soap\b|[-:–])|\b(?:not (?:[a-z]+ ){0,3}K|no K|isnt|wasnt|never|soft|shaving|potash|shop|ordered|bought|home|cupboard|different|than|unlike|either|soft soap|liquid|before|back|right one|uses|used to|friend|keep|dont|didnt|neither|nor|rather|know|also|for the|in time|both went|as well|years|later|figure)\b|\bK (?:[a-z]+ )?(?:is |was )?(?:still )?(?:sealed|unopened|shut)\b|\b(?:isnt)\b|\bL and K\b/,
    always: true,
    undone: /\b(?:back (?:on|in|to|it)|right one|in time|put it back|made me stop|did not use|didnt use)\b/,
  },
  // a fat that is not in it
  {
    tells: new RegExp(
      [
        '\\b(?:batch|one|soap|pot|mine|loaf|it) (?:has|had|got|contains|holds) (?:none|nothing) of (?:it|that|them|F)',
        '\\bno F (?:at all )?in (?:mine|it|this|here|the pot|there)\\b',
        '\\b(?:didnt|did not|havent) (?:put|use|add|take|melt|weigh) (?:any|a gram|a drop|one gram)\\b',
        '\\b(?:made|make|is|was|it|mine|stayed|went|batch) (?:[a-z]+ ){0,2}F (?:- )?free\\b',
        '\\b(?:made|did|poured|cooked|stirred|mixed|finished) (?:(?:it|this|mine|them|all|up|the soap) )*without (?:(?:the|any|that|my) )*F\\b',
        '\\b(?:save for|(?:apart|aside) from) (?:(?:the|my|that) )*F\\b(?! i (?:had|have))',
        '\\b(?:cross|crossed|strike|struck|rub|rubbed) (?:out )?(?:(?:the|my|that) )*F(?: line)?(?: out)?\\b',
        '\\b(?:nothing (?:for it|in (?:its|their|that) (?:place|stead)|instead)|nothing to replace (?:it|that))\\b',
        '\\b(?:only|just) the (?:other|remaining) (?:two|three|four|ones?|…|#|oils|fats)|\\b(?:only|just) the others\\b',
        '\\bF [^.?#]{0,12}\\b(?:it )?stayed (?:in (?:the|its)|at (?:home|the)|behind|where|on the|home)\\b',
        '\\bline (?:is|was|stays|stayed) empty\\b',
        '(?<!\\bhad )\\bno F\\b(?! (?:flavou?r|smell|taste|scent|left|problem|trouble|free|, no N|or N|and N|at all\\)|in (?:the|any|that)\\b))',
        '\\b(?:everything|all)\\b[^.?#]{0,20}\\b(?:but|except|bar) (?:(?:the|my) )*F',
        '\\b(?:struck|never saw|forgot (?:all )?about) (?:(?:the|my) )*F',
        '\\b(?:therefore|hence|so|is|was|mine|thus|then) (?:just|only) (?:the )?F and (?:the )?F\\b(?! (?:#|S|…))',
        '\\bF (?:i |we )?(?:gave|lent|sold|threw|handed)\\b(?! (?:it|me|a))',
        '\\b(?:noticed|found|saw|spotted|discovered) (?:(?:the|my) )*F [^.?#]{0,20}\\b(?:afterwards|later|still|on the|in the|in its|behind)\\b',
        '\\bF [^.?#]{0,30}\\b(?:ruled out|is out of it|had to go|fell out|fell away|got the boot)\\b',
        '\\b(?:went|carried) on with (?:only |just )?the (?:other|others|rest|two)\\b',
        '\\b(?:less|minus|bar|sans|excluding|barring|but not|but for) (?:(?:the|my|any) )*F(?! (?:#|…|S|has|and it|is still))',
        '\\bF and F (?:only|were all|was all|are all|is all)\\b',
        '\\b(?:do|did|make do|made do|managed) with (?:only |just )?(?:the )?(?:others?|rest|remaining|two)\\b',
        '\\bF (?::|=|-|is|was|were)? ?(?:zero|none|nil|nothing(?! (?:else|more)\\b))\\b',
        '\\bF [^.?#]{0,12}\\bnever (?:left|saw|touched|entered|reached|found|got|came)\\b',
        '\\bF (?:i |we )?(?:left|kept) (?:it )?(?:in|on) (?:its|the)\\b',
        '\\b(?:imagine|think|count|reckon|take) (?:(?:the|my|that) )*F (?:away|out|off)\\b',
        '\\bF (?:got|has|had|found) no place\\b|\\bF (?:is|was) (?:missing|absent|lacking)\\b',
        '^(?=[^#S]*$)(?=.*F)(?=.*\\b(?:allergic|itch|itches|itchy|rash|intolerant)\\b)(?=.*\\b(?:so|none|nothing|zero|no|not|out|free)\\b)',
      ].join('|'),
    ),
    beside: /F/,
    unless:
      /\b(?:palate|batter|fresh (?:one|lot)|weighed (?:it )?(?:again|anew)|shampoo|fine|but (?:it|this)|no [NG]|(?:with|of) (?:#|…|S) (?:of )?[FNG] and no)\b/,
  },
  {
    tells:
      /\b(?:went|goes|gone|is|are) (?:straight )?(?:to the (?:birds|dogs?|hens|chickens|compost)|in(?:to)? the (?:bin|compost|rubbish))\b/,
    beside: /F/,
    undone: /(?<!\bnothing )\binstead\b|\b(?:in its place|replac\w+|fresh one|another|packet|wrapper|empty)\b/,
  },
  // oils taken out
  {
    tells: new RegExp(
      `\\b${takes} [^.?]{0,30}?${part} [^.?]{0,40}\\b(?<!\\b(?:into|over|onto) (?:the |my |warm |melted )*)${oils}[^.?]{0,40}\\b${away}\\b|\\b${takes} [^.?]{0,12}${part} [^.?F]{0,40}\\b${oils} [^.?]{0,20}\\b(?:for|before)\\b|${part} of (?:[a-z]+ ){0,5}${oils}[^.?]{0,40}\\b(?:${takes}|sitting|ended up|went|stayed|landed|sits|is|was) [^.?]{0,30}\\b${away}\\b|\\b${oils} [^.?]{0,20}\\b${takes} ${part}[^.?]{0,20}\\b${away}\\b|\\bout of (?:the |my )?# (?:of )?(?:the )?${oils}[^.?]{0,20}\\bonly\\b|\\bonly [^.?]{0,14} of (?:the |my )?${oils}[^.?]{0,14}\\b(?:went|got|made it) in\\b`,
    ),
    beside: /L|\b(?:lye|caustic|solution)\b/,
    unless:
      /\b(?:batter|trace|cool(?:ed)?|degrees|back (?:in|into)|test|to see|thermometer|scent|colou?r|clay|mica|superfat|cook|stove|heat|oven|microwave|usual)\b/,
    undone: /\b(?:back in(?:to)?|poured (?:it|them|that) back|returned)\b/,
    always: true,
  },
  // without a label, or whatever there was
  {
    tells:
      /\b(?:without (?:a|any) labels?|no label|unlabell?ed|unmarked|label (?:had |has )?(?:came|come|fell|fallen|washed|worn|is|was|gone) (?:off|gone|away)|unknown (?:make|origin|kind|fat|oil)|could be anything|or what(?:ever)? (?:it|that) (?:was|is)|god knows what|might (?:well )?be (?:something|anything)|(?:oil|fat|bottle|tub|jar)\b[^.?]{0,20}\bno (?:clue|idea) which|whatever (?:was|stood|lay|fat|oil|i (?:had|found))|(?:(?:some|a|that) (?:other |old |kind of |sort of )*(?:solid|hard|soft)|(?:some|a|that|the) (?:other |old |kind of |sort of |solid |hard |soft )*(?:white|whitish|yellow|yellowish|nameless)) (?:white |solid )?(?:fat|stuff|grease|block|thing|lump)|something (?:whitish|white|solid|hard|yellow|else entirely)|some (?:other )?(?:fat|grease|shortening) (?:that|which|from|i))\b/,
    beside: new RegExp(
      `^(?=.*F)(?=.*\\b(?:no|none|nowhere|not|couldnt|cant|for the|instead|came from|comes from|is|was|call|${put})\\b)`,
    ),
    unless:
      /\b(?:i know|sure it is|certain|lotion|candles?|drum|purity|lye|caustic|soap is|bars? (?:is|are|was|were)|turned)\b/,
    undone: /\b(?:i know|sure it is|certain that it)\b/,
  },
  {
    tells:
      /\b(?:where it says|instead of|in place of|for) (?:the )?F (?:i|we) (?:have |had |just |simply )*(?:put|used|took|poured|went)\b[^#FNG]*$|\b(?:blend|mix|mixture|(?:frying|cooking|salad|vegetable|some) (?:oil|fat)) [^.?#]{0,30}\b(?:went in|it was|i used|i took)\b/,
    beside:
      /\b(?:where it says|instead of|in place of|for) (?:the )?F|F [^.?]{0,20}\b(?:not be|nowhere|sold out|gone)\b/,
  },
  // one fat was planned, and another one is there
  {
    tells:
      /F.*\b(?:was (?:the|my) plan|(?:ought to|should) (?:have|be)|was (?:going|meant|supposed|planned))\b|\b(?:ought to|should|(?:was|were) (?:going|meant|supposed|planned)) (?:to )?(?:have |be |been |hold |held |had |for )*(?:# (?:of )?)?F/,
    beside: /\b(?:now|instead|there is|theres|holds?|filled|put|took|used)\b/,
    unless: /\b(?:hard|soft|melted|enough|fine|clear|warm|cool|fresh|good|more|less|counted|reckoned|calculated)\b/,
  },
  // more lye by the spoon
  {
    tells:
      /(?:\bV|\b(?:heaped |level |scant |more |extra |another )*(?:tea|table|dessert|tea |table |dessert )?spoons?(?:fuls?)?|\bpinch(?:es)?|\bdash|\bhandful|\bscoop|\b(?:few|some) (?:more |extra )?(?:flakes|beads|pearls|grains|crystals)|\b(?:little|bit|some|touch|dash) (?:more|extra)|\b(?:shot|dose|helping|extra|second lot|further lot|second portion)) (?:(?:more|extra|of|the|dry|pure|fresh|additional|caustic) )*L\b|\b(?:topped|upped|increased) (?:the )?L (?:up )?by\b|(?<!\b(?:weigh|check|measur)(?:ed|ing)? (?:the )?)\bL (?:again|once more|more)\b(?! (?:than|or less))|\b(?:knife (?:tip|point)|tip of a knife) of L|\banother (?:[a-z]+ )?of L/,
    beside: new RegExp(
      `\\b(?:${put}|went in|in went|remelted|topped|as well|later|again|too|then|upped|helped|gave|mixed up|another|extra|more|additional|on top|threw)\\b`,
    ),
    unless:
      /\?|\bweighed (?:the )?L again\b|\bfor (?:the )?X|\b(?:already|citric|acid|vinegar|lemon|juice|would(?! not)|next|should|if|weighs?|at a time|by the|water first|into the water|nearly|almost|never|spil(?:led|t)|stuck|left in|could)\b/,
    undone: /\b(?:citric|acid|vinegar|lemon)\b/,
    always: true,
  },
  // all of it so many times
  {
    tells:
      /\b(?:doubled|tripled|trebled|quadrupled|halved) (?:up )?(?:(?:on|the) )*(?:every|each|all|it|this|them|that|recipe|card|lot|whole|amounts?|weights?|figures?|quantit(?:y|ies)|list|numbers|oils|fats|lye|water)\b|(?:(?:…|#|S|\btwo|\bthree|\btwice|\bdouble|\bhalf|\btriple) of|\btwice|\bdouble) everything\b|\beverything (?:[a-z]+ ){0,4}(?:twice(?: over)?|double|twofold|doubled|in double)\b|\b(?:twice|double|triple) (?:of )?that(?! much)\b|(?:…|#|\btwice|\bdouble|\btriple|\bhalf) (?:of each\b|size\b|the (?:amounts|weights|figures|quantit(?:y|ies)|list))\b|\b(?:all|each|every) (?:the |single )?(?:amounts?|weights?|figures?|numbers?|lines?|ingredients?|rows?|thing)[^.?#]{0,24}\b(?:doubled|twice|halved|tripled|times (?:two|three|#|…))(?![a-z])|\b(?:loaf|loaves|batch|recipe|card|list|lot) (?:(?:times|x|[*×]) (?:two|three|#|…)|twice over)(?! (?:in a row|running|now|already|this|last|a (?:day|week|month|year))\b)|\b(?:made|did|is|was) (?:it )?(?:a |an )?(?:double|triple|half) (?:one|batch|lot|recipe)\b|^(?:#|…) (?:of )?that (?:is|was|went)\b|(?:#|…|\btwo|\bthree) times over\b|\b(?:doubled|tripled|halved) throughout\b|\bmultiplied (?:it |everything |all |them )*(?:all )?(?:by|with)\b|(?:…|#|\btwice) as much of (?:each|everything|all)\b|\b(?:two|three|four)fold\b|\b(?:the|a) double (?:of|helping)\b|\b(?:upscaled|downscaled|scaled) (?:it|everything|all|this|that|them|the (?:lot|recipe|list))\b(?! (?:on|with) (?:the|my|a|an|our)\b)|\b(?:list|recipe|lot) (?:twice|two times|three times)\b/,
    unless:
      /\b(?:checked|check|measured|weighed everything|weighed (?:it|them|all)|counted|liners?|lining|paper|size|volume|trace|read|sister always|stuck to|single batch as|in (?:january|february|march|april|may|june|july|august|september|october|november|december)|so that|instead of (?:doubl|halv)|not|didnt|per|speed|strength|price|cost)\b/,
    below: true,
  },
  // "100 it is"
  {
    tells:
      /(?:^|[-:,!.;] ?)(?:ok|okay|fine|right|so|yes|well|,| )*(?:R|S) (?:(?:it|that) (?:is|was)\b|, (?:thats|that is|which is) what (?:i|we) \b)/,
  },
];

let nets: readonly Net[] | null = null;

/** What the reading has in the pot, by ids. */
export interface InPot {
  readonly fats: ReadonlySet<string>;
  readonly alkali: ReadonlySet<string>;
  /** Alkali to fats, by weight. */
  readonly share: number;
}

/** Tokens behind a figure in which its name may stand. */
const beyond = 4;

/** Sentences before and behind that may belong to what is told. */
const before = 2;
const behind = 1;

/** The words that tell so; null where none do. */
export function potDiffers(cut: Cut, back: readonly PutRight[], pot: InPot): string | null {
  const { tokens, prims } = cut;
  // "palm in the place of palm": what came is not known
  const odd = back.find(({ text }) => /^I took (.+?)(?: \(.*\))? in the place of \1,/.test(text));
  if (odd) return rawText(prims, tokens[odd.from]?.from ?? 0, tokens[odd.to - 1]?.to ?? 0);
  const sentences = sentencesOf(cut);
  if (sentences.every((sentence) => isSmallTalk(tokens, sentence))) return null;
  const rows = rowsBefore(tokens, tokens.length);
  const ids = new Set(
    rows.flatMap(({ id, at }) => {
      const token = tokens[at];
      return token?.t === 'name' && token.meaning.kind === 'alkali' ? [token.meaning.id] : [id];
    }),
  );
  const texts = sentences.map((sentence, k) => {
    const listed = rows.filter(({ figure, at }) => figure < sentence.from && at < sentence.from);
    const valueAt = (figure: number): number => {
      const token = tokens[figure];
      return token?.t === 'quantity' ? token.quantity.value : Number.NaN;
    };
    /** Weights of what is named here or right before. */
    const named = new Set<string>();
    const isNamed = isAny(tokens, sentence.from, sentence.to, isFat);
    for (let at = (isNamed ? sentence : (sentences[k - 1] ?? sentence)).from; at < sentence.to; at++) {
      const token = tokens[at];
      if (isFat(token)) named.add(thingOf(token));
    }
    const isLess = (value: number): boolean =>
      listed.some(({ id, figure }) => named.has(id) && value < valueAt(figure) && value > valueAt(figure) / 20);
    const isKnown = (at: number, value: number): boolean =>
      listed.some(({ figure }) => Math.abs(valueAt(figure) - value) < 0.5) ||
      isOfElse(tokens, at, new Set(listed.map(({ id }) => id)));
    return sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const at = sentence.tokenAt(place);
      const token = tokens[at];
      if (token?.t === 'quantity') {
        const { dim, value } = token.quantity;
        if (dim === 'volume') return 'V';
        if (dim === 'percent') return 'P';
        return massOf(token) && isLess(value) && !isKnown(at, value) ? 'S' : '#';
      }
      return sign === '@' ? letterOf(token, pot, ids) : sign;
    });
  });
  const last = rows.reduce((most, { at }) => Math.max(most, at), -1);
  for (const [k, sentence] of sentences.entries()) {
    const text = texts[k] ?? '';
    if (isSmallTalk(tokens, sentence) || elsewhere.test(text)) continue;
    nets ??= made();
    const isHeard = back.some(({ from, to }) => from < sentence.to && to > sentence.from);
    const near = texts.slice(Math.max(0, k - before), k + behind + 1).join(' ');
    for (const { tells, beside, unless, undone, always, below } of nets) {
      if ((isHeard && !always) || (below && last >= sentence.from)) continue;
      const found = tells.exec(text);
      if (!found || unless?.test(text) || (beside && !beside.test(near)) || undone?.test(near)) continue;
      const whole = found[0].length || text.length;
      const [first, end] = [found.index, found.index + whole - 1].map((place) => tokens[sentence.tokenAt(place)]);
      if (first && end) return rawText(prims, first.from, end.to);
    }
  }
  return null;
}

/** It stands before the name of what has no weight yet: "40 g of fresh shea". */
function isOfElse(tokens: readonly Token[], at: number, listed: ReadonlySet<string>): boolean {
  for (const token of tokens.slice(at + 1, at + 1 + beyond)) {
    if (isIngredient(token)) return !listed.has(thingOf(token));
    if (token.t !== 'word' || joins.test(token.text)) return false;
  }
  return false;
}
const joins = /^(?:and|with|then|so|but|plus|or|from|in|until)$/;

function letterOf(token: Token | undefined, { fats, alkali }: InPot, listed: ReadonlySet<string>): string {
  if (token?.t !== 'name') return 'X';
  const { kind, id } = token.meaning;
  if (kind === 'alkali')
    return alkali.size > 0 && /^(?:naoh|koh)$/.test(id) && !alkali.has(id) && !listed.has(id) ? 'K' : 'L';
  if (kind === 'stock') return 'L';
  if (!isFat(token)) return 'X';
  if (fats.has(id)) return 'F';
  return listed.has(id) ? 'G' : 'N';
}
