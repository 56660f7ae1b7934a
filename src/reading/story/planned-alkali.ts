/**
 * "First plan was a hard bar with 88 g NaOH, but then I noticed the tub is caustic potash, so … 138 g of the KOH": an alkali
 * that was only planned, beside the other one that is weighed for this pot. "The recipe I was given is for KOH, 150 g of it …
 * so I used 107 g NaOH instead": of the recipe, and not taken.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isMark, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name, rowsBefore } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'plan planned meant intended wanted going gonna idea thought recipe card book'.split(' '),
);
const plan =
  /\b(?:(?:first |my |the |original )*plan (?:was|had been|said)|(?:had |have |d )?(?:planned|meant|intended|wanted)|(?:was|were) (?:going|gonna|meant|supposed)|(?:first |my |original )*idea was|first thought)\b[^.?!;]*$/;
const ofRecipe =
  /\b(?:recipe|card|book)\b[^.?!;]*\b(?:is|was|calls?|called|asks?|asked|says|said|has|had|wants|uses|takes) (?:for |with )?(?:[a-z]+ ){0,2}#? ?(?:of )?$/;
const taken =
  /\b(?:i|we)(?: (?:have|just|only|then|now|instead))* (?:used|took|weighed|put in|went with|converted)\b[^.?!]*\binstead\b|\binstead (?:i|we)(?: (?:have|just|only))* (?:used|took|weighed|put in|went with)\b/;
const turned = /[.;:]|\b(?:but|so|then|instead|now|until|till|noticed|saw|found|turned out|only)\b/;
const open = /\?|\b(?:if|should|could|next|both|as well|also|plus|mix(?:ed)?|dual)\b/;

const kindOf = (token: Token | undefined): string =>
  isIngredient(token) && token.meaning.kind === 'alkali' ? token.meaning.id : '';

const isIn = ({ from, to }: Sentence, { at }: Weighed): boolean => at >= from && at < to;

/** "KOH, 150 g of it". */
const ofItBehind = (tokens: readonly Token[]): readonly Weighed[] =>
  tokens.flatMap((token, at) =>
    isMark(tokens[at + 1], ',') &&
    isPlain(tokens[at + 2]) &&
    /^of (?:it|that)$/.test(`${spoken(tokens[at + 3])} ${spoken(tokens[at + 4])}`)
      ? [{ at, figure: at + 2, id: kindOf(token) }]
      : [],
  );

/** The tokens without it. */
export function plannedAlkali(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const rows = [...rowsBefore(tokens, tokens.length), ...ofItBehind(tokens)].filter(({ at }) =>
    /^(?:naoh|koh)$/.test(kindOf(tokens[at])),
  );
  const [one, other, ...more] = rows;
  if (!one || !other || more.length > 0 || kindOf(tokens[one.at]) === kindOf(tokens[other.at])) return none;
  const sentences = sentencesOf(cut);
  const planned = rows.filter((row) => {
    const sentence = sentences.find((told) => isIn(told, row));
    const place = sentence?.placeOf(Math.min(row.at, row.figure)) ?? 0;
    const text = sentence?.text.slice(0, place) ?? '';
    if (open.test(text)) return false;
    if (ofRecipe.test(text)) {
      const mine = sentences.find((told) => isIn(told, row === one ? other : one));
      return mine !== undefined && mine !== sentence && taken.test(mine.text);
    }
    return plan.test(text) && !turned.test(plan.exec(text)?.[0] ?? '');
  });
  const [row] = planned;
  if (!row || planned.length > 1 || !isApart(sentences, row, row === one ? other : one)) return none;
  const out = [...tokens];
  const [figure, name] = [tokens[row.figure] as Figure, tokens[row.at] as Name];
  out[row.figure] = setApart(figure, 'planned, and not taken');
  out[row.at] = asFiller(name);
  const told: PutRight = {
    text: `I left out "${name.text} ${figure.quantity.text}", which was only planned.`,
    gone: [figure.quantity],
    from: Math.min(row.at, row.figure),
    to: Math.max(row.figure + 1, sentences.find((each) => isIn(each, row))?.to ?? 0),
    settles: true,
  };
  return { tokens: out, told: [told] };
}

/** Something turns between the plan and what was taken: they are no pair of the plan. */
function isApart(sentences: readonly Sentence[], planned: Weighed, taken: Weighed): boolean {
  const sentence = sentences.find((one) => isIn(one, planned));
  if (!sentence || !isIn(sentence, taken)) return true;
  const [from, to] = [planned, taken].map(({ at }) => sentence.placeOf(at)) as [number, number];
  return turned.test(sentence.text.slice(Math.min(from, to), Math.max(from, to)));
}
