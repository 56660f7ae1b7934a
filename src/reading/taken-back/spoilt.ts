/** A thing that was spoilt or thrown away, and what took its place: "the palm had gone rancid. Lard stood in for it". */

import type { Sentence } from '../text/sentences.ts';
import type { Change } from './changes.ts';

const unsure =
  /\?|\b(?:if|could|can|would|might|may|maybe|perhaps|before|until|next time|last time|soon|will|never|nothing|not|isnt|wasnt)\b/;
const spoilt = `(?:gone |turned |got )?(?:rancid|off|bad|mou?ldy|spoil(?:t|ed)|sour|a funny colou?r)`;
const bins = '(?:bin|trash|rubbish|compost|garbage|dustbin|hens|chickens|dog|drain|sink|floor)';
/** "The palm had gone rancid", "it went in the bin", "I threw the palm away". */
const wasSpoilt: readonly RegExp[] = [
  `(?:(?<gone>@)|\\b(?:it|that)) (?:# )?(?:, )?(?:all )?(?:# )?(?:, )?(?:had|has|have|was|were|is|smelled|smelt|looked) (?:all |a bit |already |completely )*(?:${spoilt})(?= (?:$|[-,.;:!)…]|and\\b|so\\b|when\\b|at the\\b|on top\\b))`,
  `(?:(?<gone>@)|\\b(?:it|that)) (?:# )?(?:, )?(?:all )?(?:# )?(?:, )?(?:has |had |was |is |all |had to )*(?<bin>(?:went|gone|goes|go|landed|ended up|fell|thrown|poured|tipped|spilt|spilled) (?:straight |right |all |over )*(?:in|into|to|on|onto|down) (?:the |my )?${bins}|binned|thrown (?:out|away))\\b`,
  `\\b(?:threw|chucked|tipped|binned|poured) (?:out |away |all )*(?:of )?(?:the |my |all )*(?:# of )?(?:(?<gone>@)|it\\b|that\\b)(?<bin> (?:out|away|in the ${bins}|down the ${bins})|(?<=\\bbinned [^.]*))`,
].map((pattern) => new RegExp(pattern, 'd'));
const isBinned = (text: string): boolean =>
  wasSpoilt.some((pattern) => pattern.exec(text)?.groups?.['bin'] !== undefined);
/** "Lard took its place", "250 g of that took its place". */
const tookPlace =
  /(?<comes>@) (?:# )?(?:, )?(?:then |now |so )?(?:(?:took|takes|has taken|had to take) (?:its|that|the) place|(?:took|takes) over|(?:stood|stands|stepped|jumped) in|(?:filled|went) in (?:for it|instead)|(?:came|rode) to the rescue)\b/d;
const spoiling =
  /\b(?:rancid|off|bad|mou?ldy|spoil(?:t|ed)|sour|funny|bin|trash|rubbish|compost|garbage|dustbin|hens|chickens|dog|drain|sink|floor|binned|threw|chucked|thrown)\b/;

/** "Some of the olive ended up on the floor": what is gone is a part of it. */
const partly = /\b(?:some|part|half|most|bit|third|quarter|lot|little|splash|much|amount) of (?:the |my |it |that )*$/;
/** "30 g of the olive ended up on the floor." */
const weighedPart = /# of (?:the |my |that )*$/;

const place = '(?:for it|in its place|in place of it|instead)';
let nothing: RegExp | null = null;
/** "Nothing put in for it", "I did not replace it": what was thrown away is missing. */
export function isNothingInstead({ text }: Sentence): boolean {
  nothing ??= new RegExp(
    `\\bnothing (?:else )?(?:(?:was|has|been|is|put|went|came|taken|added|used) )*(?:in )?${place}\\b|\\b(?:put|took|used|added) (?:in )?nothing (?:else )?(?:in )?${place}\\b|\\b(?:didnt|did not|havent|have not|not) (?:been )?replaced? (?:it|that|by|with)\\b|^(?:and |but |with )?no (?:substitute|replacement)\\b`,
  );
  return nothing.test(text) && !/\?|\b(?:next|yet|if|maybe|perhaps|may|might)\b/.test(text);
}

/** What a sentence tells of a thing that was spoilt or thrown away, and of what took its place. */
export function spoiltIn(sentence: Sentence, next: Sentence | undefined): readonly Change[] {
  if (!sentence.retells) return none;
  const { text } = sentence;
  const changes: Change[] = [];
  const isSpoilt = spoiling.test(text);
  const comes = sentence.names > 0 && text.includes(' ') ? tookPlace.exec(text) : null;
  if ((!isSpoilt && !comes) || unsure.test(text.replace(/\b(?:did|have) not (?:been )?replaced?\b/g, ''))) return none;
  for (const pattern of isSpoilt ? wasSpoilt : []) {
    const found = pattern.exec(text);
    if (!found || partly.test(text.slice(0, found.index))) continue;
    const [at] = found.indices?.groups?.['gone'] ?? [];
    const gone = at === undefined ? null : sentence.tokenAt(at);
    const part = weighedPart.exec(text.slice(0, found.index))?.index;
    changes.push({
      kind: 'spoilt',
      gone,
      figure: part === undefined ? null : sentence.tokenAt(part),
      at: sentence.tokenAt(found.index),
      binned: found.groups?.['bin'] !== undefined || (next !== undefined && isBinned(text) && isNothingInstead(next)),
    });
    break;
  }
  const [at] = comes?.indices?.groups?.['comes'] ?? [];
  if (at !== undefined) changes.push({ kind: 'swap', gone: null, comes: sentence.tokenAt(at), eitherWay: false });
  return changes;
}

const none: readonly Change[] = [];
