/** "Everything times two, the small batch was …": a whole recipe that is told smaller or larger than it is made. */
import { cue } from './cue-words.ts';
import type { Item } from './items.ts';
import { type Amount, isAmount } from './said.ts';
import type { Sentence } from './sentences.ts';
import type { Token } from './tokens.ts';

export interface Times {
  readonly factor: number;
  /** Its own figure, which is of no ingredient. */
  readonly figure: Amount | null;
  /** The figures are said to be of the batch as it was. */
  readonly isPlain: boolean;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const all =
  '(?:everything|all|it all|all of it|the (?:whole )?lot|(?:all )?(?:the )?(?:amounts|figures|weights|numbers))';
const times = new RegExp(
  `(?<!\\b(?:scaled|weighed|checked|counted) )\\b${all} (?:is |are |gets |get |just |taken |goes |times it |to be |will be |multiplied )*(?:(?:times|x|[*]|(?<=multiplied )by) (?<figure>#)(?! ?@)|(?<word>doubled|tripled|trebled|halved|quadrupled)\\b)`,
  'd',
);
const factors: Readonly<Record<string, number>> = { doubled: 2, tripled: 3, trebled: 3, halved: 1 / 2, quadrupled: 4 };

/** Of what was before it was made larger. */
const asItWas =
  /\b(?:was|were|tester|test batch|trial|single|original|originally|normal|usual|one batch|small (?:one|batch)|base|recipe (?:is|says|has)|for one)\b[^#]*#/;
const most = 20;

/** By what a post says that its figures are multiplied; null where it says nothing of it. */
export function timesIn(
  sentences: readonly Sentence[],
  items: readonly Item[],
  tokens: readonly Token[],
): Times | null {
  for (const [k, sentence] of sentences.entries()) {
    if (!sentence.retells || (sentence.cues & cue.all) === 0) continue;
    const { text, from, to } = sentence;
    const found = times.exec(text);
    if (!found || /\?|\b(?:if|could|would|can|might)\b/.test(text)) continue;
    const at = found.indices?.groups?.['figure']?.[0];
    const place = at === undefined ? -1 : sentence.tokenAt(at);
    const token = tokens[place];
    const said = token?.t === 'quantity' && token.quantity.dim === 'bare' ? token.quantity : null;
    const figure = items.find((one): one is Amount => isAmount(one) && one.from === place) ?? null;
    const factor = factors[found.groups?.['word'] ?? ''] ?? said?.value ?? 0;
    if (factor <= 0 || factor > most) continue;
    const isPlain = sentences.some((one, n) => asItWas.test(n === k ? one.text.replace(found[0], '') : one.text));
    return { factor, figure, isPlain, text: found[0].replace('#', said?.text ?? ''), from, to };
  }
  return null;
}
