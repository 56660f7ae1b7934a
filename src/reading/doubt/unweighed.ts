/**
 * More or less of something than its weight says, by an amount that nobody weighed: "quite a lot of the coconut stuck to the
 * bowl", "I gave it a glug of olive for luck", "about a third of the lye clumped and I threw it away". Heard by what a
 * clause holds, in any order: a vague amount, what it is of, and what became of it.
 */
import { nearly } from '../taken-back/changes.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { weighedIn, weighedThings } from '../words/weighed.ts';
import type { InPot } from './pot-differs.ts';
import { isSmallTalk } from './small-talk.ts';
import { denied, elsewhen, letterOf } from './unheard-change.ts';

const vague =
  '(?:some|bit|little|lots?|splash|glug|dash|knob|spoon(?:ful)?|drops?|lumps?|touch|handful|part|most|half|third|quarter|finger|much|amount|scrape|slosh|dollop|not all|[#…](?= of (?:the |my |that )?[FL]))';
const of = '(?: (?:more|extra|worth))?(?: of)?(?: (?:the|my|that|our|this|melted|liquid|clear))*';
/** "A bit of the lye", "some olive"; "the coconut, quite a bit of it". */
const some = new RegExp(
  `\\b${vague}${of} (?<thing>[FL])\\b|(?<thing2>[FL])\\b[^FNLX#]{0,24}\\b${vague} of (?:it|that)\\b`,
);
const measure =
  '(?:jug|bowl|cup|beaker|pan|saucepan|measuring (?:jug|cup)|dish|glass|pot lid|spoon|scoop|scales?|pitcher|bucket|funnel|sieve|ladle)';
const floor =
  '(?:floor|counter|worktop|table|sink|stove|hob|bench|drain|ground|carpet|rug|side|grass|lawn|bin|mat|lid)';
const lost = new RegExp(
  `\\b(?:spil(?:led|t|ling)|slopped|sloshed|splashed|leaked|dripped|lost|wasted|stuck|clung|clumped|undissolved|(?:didnt|not all [^.]{0,16}|not|never) dissolved?|(?:ran|boiled|foamed|splashed|went|tipped|knocked) (?:it )?over|(?:threw|thrown|tipped|poured|chucked|scooped|spooned|skimmed|took) (?:it |that |them |some )?(?:away|out|off|back)|(?:left|remained|remains|stayed|is still|was still|still has|still) [^#.?]{0,24}\\b(?:in|on|inside) (?:the|my|its|a) (?:[a-z]+ )?${measure}|(?:on|onto|down|over|(?:landed|ended up|went|ran) in(?:to)?) (?:the|my|our) (?:[a-z]+ )?${floor})\\b|\\bnot all of (?:the |my )?[FL] (?:went|got|made|came|dissolved|melted|is in|was in|ran)|\\b(?:cat|dog|toddler|kid|son|daughter)s? (?:ate|licked|got|drank|knocked)`,
);
/** "The jug still has a finger of olive in it". */
const kept = new RegExp(
  `\\b${measure} (?:still )?(?:has|had|holds|held|kept) [^#.?]{0,24}\\b${vague}${of} [FL]\\b|\\bleft (?:a |an )?(?:good |fair |tiny |small )?${vague}${of} [FL] (?:behind )?in (?:the|my) (?:[a-z]+ )?${measure}\\b`,
);
const deed =
  '(?:put|gave|give|added|threw|chucked|tipped|poured|squeezed|dropped|splashed|drizzled|bunged|popped|slipped|lobbed|snuck|sneaked|shook|sprinkled|stirred|melted)';
/** "Put a knob more coconut in", "gave it a glug of olive"; "topped the olive up a little". */
const added = new RegExp(
  `\\b${deed} (?:(?:in|it|them|the|pot|batter|mix|mixture|me|then|just|also|only|another|an?|good|big|small|tiny|fair|extra|further|wee) )*(?<!\\bthe )${vague}(?: (?:more|extra|worth))?(?: of)?(?: melted| liquid)* (?<thing>[FL])\\b|\\btopped (?:the |my )?(?<thing2>[FL]) up\\b|\\btopped up (?:the |my )?(?<thing3>[FL])\\b(?! (?:with|to)\\b)`,
);
/** "Some more fell in the water, no idea how much", of what was weighed before. */
const fellIn =
  /\b(?:some|a bit|a little|a few|rather a lot|lots?|too much) (?:more |extra |too much )?(?:of it |[FL] )?(?:then |also |just )*(?:fell|slid|slipped|landed|tipped|dropped|poured|came|tumbled|ran|spilled|sloshed) in(?:to)?\b|\b(?:some|a bit|a little|a few) more (?:of it |[FL] )?(?:then |just )*(?:went|got) in(?:to)?\b/;
/** "Weighed 500 g olive, then took a bit back out". */
const tookBack =
  /# (?:of )?(?:the |my )?[FL]\b[^.?#]{0,20}\b(?:took|poured|spooned|scooped|tipped) (?:a (?:little |tiny )?(?:bit|little)|some)(?: of it)?(?: back)? (?:out|away|off|back)\b/;
/** "25 g of it on the worktop". */
const spiltOfIt = new RegExp(
  `[#…] of (?:it|that|the [FL]) (?:(?:landed|went|ended up|ran|fell|is|was|are|were|now|then|all) )*(?:on|onto|over|down|across|in) (?:the|my|our) (?:[a-z]+ )?${floor}\\b`,
);
/** "Olive ran out, finished with sunflower". */
const eked =
  /\bF\b[^.?#]{0,30}\b(?:ran out|was (?:all )?gone|was empty|ended|finished|didnt (?:reach|stretch|last)|not enough|too little)\b[^.?#]{0,30}\b(?:finished|topped|filled|carried on|continued|ended|completed|made (?:it |the rest )?up|rest (?:is|was))[^.?#]{0,16} (?:with|is|was|of) (?:[a-z]+ )?[FN]\b/;
/** "It was actually lard in the coconut tub", "the coconut was fractionated", "the lye is potassium". */
const another =
  /\b(?:actually|really|in fact|turns out|turned out)\b[^.?#]{0,24}\b[FN] (?:thats |that was |that is )?in (?:the|my|that) F (?:tub|jar|bottle|bag|box|tin|bucket|pot|container)\b|\bF (?:is|was) (?:actually |really |the )*(?:fractionated|hydrogenated|hardened|pomace|high oleic)\b|\b(?:its|thats|theres|it is|it was|that is|there is) (?:now |all )?N (?:thats |now )?in (?:there|the pot|the pan|mine)\b(?! too\b)/;
/** "The lye is potassium". */
const lyeIs = /\bL (?:is|was) (?:actually |really |in fact |the |a )*(?<other>L)\b/d;
/** "I left 40 g of the coconut in the bowl". */
const heldBack = new RegExp(
  `\\b(?:left|kept) (?:about |only |some )?# (?:of )?(?:the |my )?F (?:behind |back )?in (?:the|my|a) (?:[a-z]+ )?${measure}`,
);
/** "Didn't weigh the lye, went by last time". */
const guessed =
  /(?<!\b(?:she|he|they)(?: [a-z]+)? )\b(?:did ?nt|didnt|did not|havent|hadnt) (?:actually |really |even )?(?:weigh|measure)(?:ed|d)?(?: out)? (?:the |my |any of the )?(?:[FL]|oils?|fats?)\b(?!.*#)/;
/** What was put there is for the mould, the hands, the colour or the kitchen, and no part of the soap. */
const besides =
  /\b(?:greas\w+|lin(?:e|ed|ing)|rub\w*|wip\w+|mou?lds?|hands|skin|hair|beard|feet|fry\w*|salad|toast|eat|eating|dinner|supper|candles?|balm|mica|clay|colou?r\w*|pigment|titanium|charcoal|oxide|cocoa|turmeric|swirl|paste|slurry|disperse\w*|test|tester|sample|zap)\b/;
const portion =
  '(?:(?:about |exactly |roughly |around |just |the other |a good )*(?:a |one |two |three )?(?:half|thirds?|quarters?|fifths?|part|some|most|#|…))';
const melt =
  '(?:(?:the|my|this|that|these|those|all|melted|whole|mixed|warm) )*(?:mix|mixture|melt|fats?|oils?|fats and oils|oils and fats|blend|lot|it|them)';
/** "Poured half of the mix back into the bucket": of what had been melted together. */
const meltParted = new RegExp(
  `\\b(?:poured|put|ladled|scooped|spooned|took|gave|tipped|kept|saved|froze|removed|set|left|drained) ${portion} of ${melt} (?:[a-z]+ )?(?:back|out|away|aside|apart|by|off|over|into the (?:bucket|tub|jar|tin|bottle|freezer|fridge|cupboard)|in the (?:bucket|tub|jar|tin|freezer|fridge|cupboard)|for (?:next|later|another|tomorrow|the next|my|candles?|a friend))\\b|\\b${portion} of ${melt} (?:(?:was|were|is|are|then|i|we|got|again|all) )*(?:went|goes|poured|put|kept|saved|ladled|taken|frozen|set|came|moved) (?:back|out|away|aside|apart|by|off|into the (?:bucket|tub|jar|tin|bottle|freezer|fridge|cupboard)|in the (?:bucket|tub|jar|tin|freezer|fridge|cupboard)|for (?:next|later|another|tomorrow))\\b`,
);
const partedElse = /\?|\b(?:if|would|should|next time|usually|last (?:time|batch))\b/;
const batter = /\b(?:batter|soap|mou?lds?|trace|loaf|bars?|swirl|colou?r\w*|scent\w*|cooked|portion)\b/;
const open =
  /\?|\b(?:if|would|should|could|might|next time|usually|normally|always|often|sometimes|last (?:time|batch|year|month)|once|until|till|then weighed|weighed (?:it |again|anew|what)|again|refilled|wiped|made (?:it )?(?:up|good)|replaced|not (?:a )?(?:drop|bit)|without|never (?:lost|spil))\b/;

/** "My son helped and poured sunflower oil in", "somebody tipped castor into the pot": of a fat that has no weight. */
const pot = '(?:pot|pan|kettle|bowl|batter|mix|mixture|soap|oils|fats|batch|crock|cooker)';
const intoIt = `(?:in(?:to)?|to) (?:it|that|there|(?:the|my|our) (?:(?:soap|big|other|melted|same) )?${pot})\\b`;
const pouredIn = new RegExp(
  `\\b(?:poured|tipped|dumped|chucked|threw|thrown|emptied|squirted|added|put|gave|given|knocked|mixed|stirred) (?:(?:also|then|just|me|some|more|extra|the|my|our|a|of|lot|in|bottle|whole|his|her|their|over) )*N (?:(?:in|too|also|as well|inside)(?= (?:[-,.;:!()–—]|$|and|while|when|too|as|for me|because|behind|without|but)| ?$)|(?:as well )?${intoIt})|\\b(?:poured|tipped|dumped|chucked|threw|knocked|mixed|stirred) in (?:(?:some|more|the|my|his|her) )*N(?= (?:[-,.;:!()–—]|$|and|while|when|too|as|because|without)| ?$)`,
);
const notPoured =
  /\?|\b(?:if|would|should|could|might|will|ill|wanted|want|meant|tried|trying|going|about to|nearly|almost|stopped|before (?:he|she|it|they) could|last (?:time|week|month|year)|next|once|years? ago|usually|normally|always|often|sometimes|people|folks?|everyone|recipes?|(?<!how )many|hers|theirs|never|didnt|not (?:put|pour\w*|add\w*)|nothing)\b/;

/** Where nothing of `back` overlaps: the words of the first such clause. */
export function unweighed(
  cut: Cut,
  back: readonly { readonly from: number; readonly to: number }[],
  inPot: InPot,
): string | null {
  const { tokens, prims } = cut;
  const weighed = weighedThings(tokens);
  if (weighed.size === 0) return null;
  const isKoh = weighedIn(tokens, 0, tokens.length, /^alkali$/).some(({ at }) => {
    const token = tokens[at];
    return token?.t === 'name' && token.meaning.kind === 'alkali' && token.meaning.id === 'koh';
  });
  const sentences = sentencesOf(cut);
  const said = ({ from, to }: Sentence): string =>
    rawText(prims, tokens[from]?.from ?? 0, tokens[to - 1]?.to ?? 1).trim();
  for (const [k, sentence] of sentences.entries()) {
    if (back.some(({ from, to }) => from < sentence.to && to > sentence.from)) continue;
    const text = sentence.text
      .replace(/@/g, (_, at: number) => letterOf(tokens[sentence.tokenAt(at)], weighed))
      .replace(/\b(?:by|like|from|as) last (?:time|batch)\b/, (said) => '-'.repeat(said.length));
    const isFallen =
      (fellIn.test(text) || spiltOfIt.test(text) || tookBack.test(text)) &&
      !/\?|\b(?:if|would|nearly|almost)\b/.test(text);
    const isPoured = pouredIn.test(text) && !/#/.test(text) && !notPoured.test(text) && !besides.test(text);
    if (isPoured && isOfNone(sentence.text)) return said(sentence);
    const isParted = meltParted.test(text) && !batter.test(text) && !partedElse.test(text);
    if (!isFallen && !isParted && (!/[FL]/.test(text) || isElse(text, sentences[k + 1]?.text ?? ''))) continue;
    const other = (text.includes('#') ? null : lyeIs.exec(text))?.indices?.groups?.['other']?.[0];
    const lye = other === undefined ? undefined : tokens[sentence.tokenAt(other)];
    const isPotash = lye?.t === 'name' && lye.meaning.kind === 'alkali' && lye.meaning.id === 'koh' && !isKoh;
    if (isFallen || isParted || (tells(text) && !isSmallTalk(tokens, sentence)) || isPotash) return said(sentence);

    /** What was poured is none of the fats of the pot. */
    function isOfNone(plain: string): boolean {
      return [...plain.matchAll(/@/g)].some(({ index }) => {
        const token = tokens[sentence?.tokenAt(index) ?? 0];
        return token?.t === 'name' && token.meaning.kind === 'fat' && !inPot.fats.has(token.meaning.id);
      });
    }
  }
  return null;
}

const isElse = (text: string, next: string): boolean =>
  open.test(text) ||
  denied.test(text) ||
  elsewhen.test(text) ||
  nearly.test(text) ||
  /\b(?:weighed|refilled|topped|replaced|made (?:it|that) (?:up|good)|started (?:again|over))\b|\b(?:left|remain\w*|still|now|was|is)\b[^#.?]{0,24}#/.test(
    next.slice(0, soon),
  );
const soon = 60;

function tells(text: string): boolean {
  if (/#/.test(text)) return another.test(text) || heldBack.test(text);
  return (
    (some.test(text) && lost.test(text)) ||
    kept.test(text) ||
    (added.test(text) && !besides.test(text)) ||
    eked.test(text) ||
    another.test(text) ||
    guessed.test(text)
  );
}
