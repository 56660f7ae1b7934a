/**
 * What is left to reckon from two weights, where no rule has reckoned it: what a vessel weighed with what is in it, a
 * weight before and one after, an amount that stayed in its jar, what came of an infusion, a plan that was stopped short. Asked about, since the
 * larger figure is never what went in.
 */
import { vessels } from '../story/by-difference.ts';
import { isPlain } from '../story/tale.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isWeight } from '../words/token-is.ts';
import { isSmallTalk } from './small-talk.ts';

interface Net {
  readonly tells: RegExp;
  /** What is said there, or right before or behind. */
  readonly beside?: RegExp;
  readonly unless?: RegExp;
}

const the = '(?:(?:the|my|its|a|an|that|this|same|full|empty) )*';
const away =
  /\?|\b(?:if|would|could|next|usually|normally|last (?:time|batch|year|month|week)|soaps?|bars?|loaf|mou?ld|batter|cook|cooked|cure|curing|evaporat\w*|degrees?|minutes?|hours?|tared|zeroed|batch|each)\b/;

/** `@` a name, `#` a weight that no rule has set aside. */
const made = (): readonly Net[] => [
  {
    tells: new RegExp(
      [
        `\\b${vessels} (?:with|plus|and|of) ${the}@(?: (?:in|on) (?:it|there))?[^@#…?.]{0,16}\\b(?:was|is|weigh(?:s|ed)|show(?:s|ed)|said|says|together|at|comes|came)\\b[^@#…?.]{0,16}#`,
        `\\b${vessels} (?:with|plus) ${the}@(?: in it)?(?: :)? #(?! (?:of )?@)`,
        `\\b(?:with|plus|including) ${the}@ (?:in|inside|on) (?:it|there|${the}${vessels})\\b[^@#…?.]{0,24}#`,
        `#[^@#…?.]{0,24}\\b(?:with|plus|including) ${the}@ (?:in|inside|on) (?:it|there|${the}${vessels})\\b`,
        `\\b@ (?:and|with|plus|including|in) (?:the|its|my|a) ${vessels}\\b[^@#…?.]{0,12}\\b(?:was|is|weigh(?:s|ed)|show(?:s|ed)|together|at)\\b[^@#…?.]{0,12}#`,
      ].join('|'),
    ),
    beside: /\b(?:weigh\w*|scales?|display|tare|taring|zero\w*|show(?:s|ed)|empty|alone|itself|reads?)\b/,
    unless: /\bwhat (?:really |then )?(?:went|goes|came|is|was|i put) in(?:to)?\b/,
  },
  {
    tells:
      /#[^@#…?]{0,30}\b(?:before|full|at first|to (?:start|begin) with|when (?:i|we) (?:started|began))\b[^@#…?]{0,60}#[^@#…?]{0,30}\b(?:after(?:wards)?|now|empty|(?:when|once) (?:i|we) (?:was|were|had|finished))\b|\b(?:before|full|at first|first)\b[^@#…?]{0,30}#[^@#…?]{0,40}\b(?:after(?:wards)?|then|now|empty)\b[^@#…?]{0,30}#|\b(?:after(?:wards)?|now|empty)\b[^@#…?]{0,30}#[^@#…?]{0,40}\b(?:before|full|at first)\b[^@#…?]{0,30}#/,
    beside: new RegExp(`\\b(?:weigh\\w*|scales?|display|${vessels})\\b`),
  },
  // so much of a pack
  {
    tells: new RegExp(
      [
        `#[^@#…?.]{0,24}\\b(?:(?:still|left|remain(?:s|ed|ing)?|over|stay(?:s|ed)) )+(?:in|inside|at the bottom of) (?:it|there|${the}${vessels})\\b`,
        `\\b(?:left|remain(?:s|ed|ing)?|over|stay(?:s|ed)|still) (?:in|inside) (?:it|${the}${vessels})\\b[^@#…?.]{0,24}#(?! (?:of )?@)`,
        `\\b(?:whats|what is|what was) (?:still )?(?:left|over|missing)\\b[^@#…?.]{0,30}#(?! (?:of )?@)`,
      ].join('|'),
    ),
    beside: new RegExp(
      `#[^@#…?.]{0,14}\\b${vessels}\\b[^#]*#|\\b${vessels}\\b[^@?.]{0,24}#[^#]*#|\\b(?:opened|made up|mixed|dissolved|rendered)\\b`,
    ),
    unless: /\bonly\b|\b(?:never|no more) (?:had|have|got|was|were)\b/,
  },
  // so much of what was told
  {
    tells: new RegExp(
      [
        `\\bof (?:the|my) @[^@#…?.]{0,12}#[^@#…?.]{0,16}\\b(?:stay(?:s|ed)|left|remain(?:s|ed)?|still) (?:behind )?(?:in|on|at) `,
        `# of (?:it|that) (?:is |was |are |were )?(?:still|left over|left(?! out)|unused|remain(?:s|ed|ing))\\b`,
        `#[^@#…?.]{0,24}\\b(?:still|left|remain\\w*|stay(?:s|ed)|over)\\b[^?#]{0,60}\\b(?:the rest|everything else|the remainder|all else)\\b`,
        `\\b(?:kept|held|keep|hold|saved)(?: back| aside| over)? [#…] of (?:it|that|the (?:solution|@|&))\\b`,
        `\\b(?:strain|filter|squeez|press)\\w*\\b[^@?]{0,30}#[^@?.]{0,16}\\b(?:left|came|remain\\w*|over|out)\\b`,
      ].join('|'),
    ),
    unless: /\b(?:never|no more|only) (?:had|have|got|was|were)\b/,
  },
  {
    tells:
      /\b(?:going to|planned|plan was|meant|wanted|intended|supposed|hoped|aimed|set out)\b[^?#]{0,60}#[^?]{0,90}\b(?:stopped|quit|gave up|left it (?:at|with)|called it (?:a day|quits)|held off|drew the line)\b|\b(?:stopped|quit|gave up|called it (?:a day|quits)|drew the line) (?:[a-z@]+ ){0,4}(?:at|after|with) (?:about |only |just )*#/,
    beside: /@/,
    unless: /\b(?:stirr\w*|blend\w*|trac\w*|heat\w*|weighing and)\b/,
  },
  {
    tells:
      /\bthe difference\b (?:(?:between (?:them|the two|both)|of the two|is|was|thats|that is|are|,) )*(?:what|went|goes|in\b|is in|must)|\bwhats missing (?:from|in) (?:it|there|the [a-z]+)(?! [^.?]{0,20}#)|\bwhat is missing (?:from|in) (?:it|there|the [a-z]+)(?! [^.?]{0,20}#)/,
    beside: /[#]/,
  },
];

/** "The empty bowl is 340 g, with the tallow in it 1190 g so minus the bowl": reckoned with both. */
const takenOff =
  /\b(?:took|taken|deducted|subtracted|minus|less|without) (?:off )?(?:the |its )?(?:empty )?(?:bowl|jug|pot|pan|jar|tub|cup|beaker|bucket|vessel|container|dish)\b/;

let nets: readonly Net[] | null = null;
/** Without one of these none of the nets holds anything. */
const cues =
  /\b(?:with|plus|and|of|including|in|before|full|first|begin|start|after|afterwards|now|empty|still|left|over|remain\w*|stay\w*|stopped|quit|gave|called|held|drew|difference|missing|strain\w*|filter\w*|squeez\w*|press\w*|kept|held|keep|hold|saved)\b/;

/** The words that tell so; null where none do. */
export function weighedApart(cut: Cut, back: readonly PutRight[]): string | null {
  const { tokens, prims } = cut;
  const sentences = sentencesOf(cut);
  const isBare = !tokens.some(isWeight);
  const texts = sentences.map((sentence) =>
    sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      if (sign === '@') return isIngredient(token) ? '@' : '&';
      return isPlain(token) && (isBare || isWeight(token)) ? '#' : '…';
    }),
  );
  for (const [k, sentence] of sentences.entries()) {
    if (!cues.test(texts[k] ?? '') || isSmallTalk(tokens, sentence)) continue;
    if (back.some(({ from, to }) => from < sentence.to && to > sentence.from)) continue;
    const text = texts[k] ?? '';
    nets ??= made();
    const near = texts.slice(Math.max(0, k - 1), k + 2).join(' ');
    for (const { tells, beside, unless } of nets) {
      const found = tells.exec(text);
      if (
        !found ||
        away.test(text) ||
        (text.includes('…') && takenOff.test(text)) ||
        unless?.test(text) ||
        (beside && !beside.test(near))
      )
        continue;
      const [first, last] = [found.index, found.index + found[0].length - 1].map(
        (place) => tokens[sentence.tokenAt(place)],
      );
      if (first && last) return rawText(prims, first.from, last.to);
    }
  }
  return null;
}
