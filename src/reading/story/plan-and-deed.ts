/**
 * "Plan was 500 olive, 300 coconut, 100 avocado. What I really did: 600 g olive, 300 g coconut, no avocado at all": a list
 * that was planned and then the whole list that was made. The second one counts; where it does not say what became of a
 * fat of the first, it is asked about, unless it is headed as the whole of what was done.
 */
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { apart, isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

/** Words of which one stands in what heads the plan. */
const cues: ReadonlySet<string> = new Set(
  'plan planned recipe idea intention formula card list sheet paper theory intended wanted meant'.split(' '),
);
const opens = '^(?:(?:so|ok|okay|well|hi|hello|hey|and|yesterday|today) )?[,:-]? ?';
const plan = new RegExp(
  `${opens}(?:(?:the|my|our) )?(?:original |old |first )?(?:plan|recipe|idea|intention|formula|card|list|sheet|paper) ?(?:(?:was|is|said|says|had|has|called for|to use|went|:|=|-) ?)+(?:to use )?[#@]|${opens}(?:i|we) (?:had |have )?(?:planned|wanted|meant|intended) (?:on |to (?:use|take|do|make) |with )?[#@]|${opens}(?:planned|intended|wanted|on paper|in theory)(?: (?:was|were))? ?(?:[:=-] )?[#@]`,
);
const deed =
  /^(?:[-–—] ?)?(?:(?:but|and|so|then|now|well|however|only) ?,? ?)*(?:what (?:i|we|it|really|actually|went|ended|got|is)\b|in (?:reality|fact|truth|the end|practice|the pot)\b|(?:real(?:ly|ity)?|actual(?:ly)?|done|did|made)\b|(?:i|we) (?:then )?(?:really|actually|in the end|ended up|did|made|used|took|put|weighed|poured)\b)/;
const notDone =
  /\?|\b(?:if|want|would|could|should|might|will|going to|like to|maybe|perhaps|or|next|last|more|extra)\b/;
/** It goes on from the plan. */
const leans = /\b(?:rest|everything else|all else|others?|otherwise|remaining|same|instead|except|only)\b/;
/** "What I really did:", "in reality:". */
const headed = /^[^#:]*: ?(?:about )?[#@]/;
/** Sentences from the plan to the deed, at the most. */
const reach = 3;

/** The plan's rows, and the sentence that tells the whole of what was done. */
function toldIn(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
): { readonly from: number; readonly deed: Sentence; readonly rows: readonly Weighed[] } | null {
  const k = sentences.findIndex(({ text, figures, names }) => figures > 1 && names > 1 && plan.test(text));
  const first = sentences[k];
  const done = sentences.slice(k + 1, k + 1 + reach).find(({ text, figures }) => figures > 1 && deed.test(text));
  if (!first || !done || notDone.test(done.text) || leans.test(done.text)) return null;
  const rows = rowsBefore(tokens, done.from).filter(({ at, figure }) => Math.min(at, figure) >= first.from);
  return { from: first.from, deed: done, rows };
}

/** The list that was made, without the one that was planned. */
export function planAndDeed(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token).split(' ').at(-1) ?? ''))) return none;
  const told = toldIn(tokens, sentencesOf(cut));
  if (!told) return none;
  const { from, deed: done, rows } = told;
  const isOfFat = ({ at }: Weighed): boolean => isFat(tokens[at]);
  const made = rowsBefore(tokens, done.to).filter(({ at, figure }) => Math.min(at, figure) >= done.from);
  const isMade = ({ id }: Weighed): boolean => made.some((one) => one.id === id);
  const isSame = (row: Weighed): boolean =>
    made.some(
      ({ id, figure }) =>
        id === row.id && isSum(weightAt(tokens, figure, figure), weightAt(tokens, row.figure, figure)),
    );
  const fats = rows.filter(isOfFat);
  if (fats.length < 2 || made.filter(isOfFat).length < 2 || !fats.some(isMade)) return none;
  const isNamed = ({ id }: Weighed): boolean =>
    tokens.slice(done.from, done.to).some((token) => isFat(token) && thingOf(token) === id);
  const open = fats.filter((row) => !isNamed(row));
  const isWhole = headed.test(done.text) || made.filter(isOfFat).length >= fats.length;
  // a change or two, of a list that stands
  if (open.length > 0 && !(isWhole || fats.some(isSame))) return none;
  if (open.length > 0 && !isWhole)
    return { ...none, unheard: rawText(prims, tokens[done.from]?.from ?? 0, tokens[done.to - 1]?.to ?? 1).trim() };
  const out = [...tokens];
  const gone = rows.filter((row) => isOfFat(row) || isMade(row));
  for (const { at, figure } of gone) {
    apart(out, figure, 'what was planned', made[0]?.figure ?? -1);
    out[at] = asFiller(tokens[at] as Token);
  }
  // "no avocado at all", "zero shea"
  const isOut = new Set(fats.map(({ id }) => id));
  for (let at = done.from; at < done.to; at++) {
    const token = tokens[at];
    if (!isFat(token) || !isOut.has(thingOf(token))) continue;
    const row = made.find((one) => one.at === at);
    const weight = tokens[row?.figure ?? -1];
    const isNone = isPlain(weight) && weight.quantity.value === 0;
    if (row && !isNone) continue;
    out[at] = asFiller(token);
    if (row && isNone)
      apart(out, row.figure, 'none of it', made.find(({ figure }) => figure !== row.figure)?.figure ?? -1);
  }
  return {
    tokens: out,
    told: [
      {
        text: 'I took the list of what was done, not the one that was planned.',
        gone: gone.map(({ figure }) => (tokens[figure] as Figure).quantity),
        from,
        to: done.to,
        settles: true,
      },
    ],
  };
}
