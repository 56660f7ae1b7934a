/**
 * Two pots that became one: "one with 500 g palm and 200 g coconut, the other with 400 g olive and 200 g coconut … I tipped
 * both into one". What is in both counts twice.
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat } from '../words/token-is.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

const pot = '(?:pot|pan|bowl|batch|jug|kettle|bucket|mix|lot|tub|one)';
/** "One with", "the first has": where the second list begins. */
const first = new RegExp(
  `\\b(?:one|first|(?:pot|bowl|pan|batch) (?:a|one|1|#)|left|big|small)(?: (?:[a-z]+ )?${pot})? (?:(?:with|has|had|held|holds|was|is|of|contains|contained|got|had in it|:|=|\\() )+(?:about )?[#@]`,
);
const other = new RegExp(
  `\\b(?:(?:the|my) (?:other|second)|another|second|(?:pot|bowl|pan|batch) (?:b|two|2|#)|the right|the small|the big)(?: (?:one|(?:[a-z]+ )?${pot}))? ?(?:(?:with|has|had|held|holds|was|is|of|contains|contained|got|just|only|:|=|\\() )*(?:about )?[#@]`,
  'd',
);
const both =
  '(?:both|the two|them|everything|it all|all|the (?:two )?(?:pots|bowls|pans|batches|mixes|lots)|one into the other|the (?:second|other|first)(?: one| pot| bowl| pan)?)';
/** "In the end I tipped both pots into one". */
const merged = new RegExp(
  `\\b(?:tipped|poured|put|mixed|combined|merged|stirred|threw|melted|united|blended|joined|emptied)(?: [a-z]+)? ${both}(?: [a-z]+){0,2} (?:in(?:to)? (?:the |a )?(?:same|one|single|big|large|other|first|second)|together|up)\\b|\\b(?:combined|merged|joined|united) ${both}\\b|\\bboth(?: [a-z]+)? (?:went|are|is|came|were (?:put|tipped|poured)) (?:in(?:to)? (?:the )?(?:same|one)|together)\\b|\\bmade (?:it |them )?(?:all )?(?:into )?one (?:soap|batch|pot)\\b`,
);
/** "In the blue pan I melted 300 g …, in the red pan …": where the second begins; `merging` says that one went into the other. */
const eachIn = new RegExp(
  `\\b(?:in(?:to)?|inside) (?:the |my |a )(?<x>[a-z]+) ${pot}\\b[^?]*?#[^?]*?\\b(?<y>(?:in(?:to)?|inside) (?:the |my |a )(?!\\k<x>\\b)[a-z]+ (?:${pot})\\b[^#@?.;]{0,40}#)`,
  'd',
);
const merging = new RegExp(
  `\\b(?:tipped|poured|put|mixed|stirred|emptied|turned|scraped|went|goes|gave)(?: [a-z]+)? (?:(?:all|everything|what was) )?(?:(?:from|of|out of|in) )?(?:the |my )?[a-z]+ (?:${pot} )?(?:over )?in(?:to)? (?:the |my )?[a-z]+ (?:${pot})\\b|\\b(?:the |my )[a-z]+ ${pot} (?:(?:was|i|we|have|then|is) )*(?:(?:tipped|poured|put|emptied|turned|went|goes|scraped) )?(?:over )?in(?:to)? (?:the |my )[a-z]+ (?:${pot})\\b`,
);
const open =
  /\?|\b(?:if|would|could|should|might|may|next|last (?:time|week|month|year)|never|nearly|not|batter|swirl|layers?|mou?ld)\b/;

interface Pots {
  readonly turn: number;
  readonly end: number;
}

function potsIn(sentences: readonly Sentence[], k: number): Pots | null {
  const sentence = sentences[k];
  const next = sentences[k + 1];
  const each = sentence && eachIn.exec(sentence.text)?.indices?.groups?.['y']?.[0];
  if (sentence && each !== undefined) return { turn: sentence.tokenAt(each), end: sentence.to };
  if (!sentence || !first.test(sentence.text)) return null;
  for (const one of [sentence, next]) {
    const place = one ? other.exec(one.text)?.index : undefined;
    if (one && place !== undefined) return { turn: one.tokenAt(place), end: one.to };
  }
  return null;
}

export function twoPots(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const together = sentences.find(({ text }) => (merged.test(text) || merging.test(text)) && !open.test(text));
  if (!together) return none;
  const k = sentences.findIndex((_, n) => potsIn(sentences, n) !== null);
  const pots = k < 0 ? null : potsIn(sentences, k);
  if (!pots || together.from < (sentences[k]?.from ?? 0)) return none;
  const rows = rowsBefore(tokens, pots.end).filter(({ at }) => isFat(tokens[at]));
  const [one, two] = [rows.filter(({ figure }) => figure < pots.turn), rows.filter(({ figure }) => figure > pots.turn)];
  const out = [...tokens];
  const texts: string[] = [];
  for (const row of two) {
    const same = one.filter(({ id }) => id === row.id);
    const [before, ...more] = same;
    if (!before || more.length > 0) continue;
    const [was, now] = [tokens[before.figure], tokens[row.figure]];
    const added = weightAt(tokens, row.figure, before.figure);
    if (!isPlain(was) || !isPlain(now) || Number.isNaN(added)) return none;
    const sum = withValue(was.quantity, was.quantity.value + added);
    out[before.figure] = { ...was, quantity: { ...sum, numbers: was.quantity.numbers } } as Figure;
    out[row.figure] = asAside(now, 'counted with that of the other pot');
    const name = tokens[row.at];
    if (name?.t === 'name') out[row.at] = asFiller(name);
    texts.push(
      `${sum.text} of ${name?.t === 'name' ? name.text : 'it'} (${written(was.quantity)} and ${written(now.quantity)})`,
    );
  }
  if (texts.length === 0) return none;
  const text = `I took ${texts.join(', ')}: both pots went into one, as the post says.`;
  return { tokens: out, told: [{ text, gone: [], from: sentences[k]?.from ?? 0, to: together.to, settles: true }] };
}
