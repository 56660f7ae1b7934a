/**
 * "Card says 150 g coconut, I've gone and put 300 g in the pot", "for the shea the book wants 40 g, I used 60 g": what a
 * paper says of one weight, and what was put in. The pot counts.
 */

import { once } from '../once.ts';
import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { seasons } from '../words/cue-words.ts';
import { isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, type Name, rowsOf, toldIn, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'put tipped poured weighed used took added dumped chucked melted measured threw dropped'.split(' '),
);

const paper =
  '(?:the |my |our |this |that |her |his )?(?:recipe |old )?(?:card|recipe|book|notebook|notes?|sheet|plan|list|page|paper|printout|formula)(?: (?:really|only|clearly|originally))*';
const says =
  '(?:says?|said|wants?|wanted|(?:calls?|called|asks?|asked) for|has|had|reads?|gives?|gave|lists?|listed)(?: (?:only|just))*';
const but = '(?: (?:[,;–—-]|but|and|though|however|yet))* ';
const did =
  '(?:i|ive|i have|we|weve|we have)(?: (?:had|gone|went|go|and|then|accidentally|really|actually|just|only|stupidly|somehow|by mistake))* (?:put|tipped|poured|weighed|used|took|added|dumped|chucked|melted|measured|threw|dropped)(?: (?:in|out|only|just))*';
const behind =
  '(?! (?:of )?(?:the |my )?@)(?: (?:of (?:it|that)|in(?:to)?(?: (?:the|my) (?:pot|pan|bowl|kettle|mix|soap|jug))?|instead|by (?:mistake|accident)|for (?:this|mine)))*(?= (?:[.,;:!)•…–—-]|and\\b|so\\b|but\\b|because\\b|as\\b)| $|$)';
const makePatterns = (): readonly (readonly ['said', RegExp])[] =>
  [
    `(?<!\\b(?:in|on|from|by|with) )\\b${paper} ${says} (?<a>#) (?:of )?(?:the )?(?<f>@)${but}${did} (?<b>#)${behind}`,
    `\\bfor (?:the |my )?(?<f>@) (?:, )?${paper} ${says} (?<a>#)${but}${did} (?<b>#)${behind}`,
  ].map((source) => ['said', new RegExp(source, 'd')] as const);
const patterns = once(makePatterns);

/** Nobody has done it, not in this batch, or not all of it. */
const open =
  /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|never|not|half|part|some|once|later|rest of)\b/;
/** Told before it. */
const elsewhen = new RegExp(
  `\\b(?:${seasons.replaceAll(' ', '|')}|ago|once|previous|earlier|last (?:time|batch|week|month|year)|if|when)\\b[^.!]*$`,
);

const mostTimes = 4;

function hear(tokens: Token[], { match, tale, span, sentence }: Note): PutRight | null {
  const at = toldIn(tale, match);
  const [a, b] = [at('a'), at('b')];
  const [name, was, now] = [tokens[at('f')], tokens[a], tokens[b]];
  if (!isIngredient(name) || !/^(?:fat|water|liquid)$/.test(name.meaning.kind) || !isPlain(was) || !isPlain(now))
    return null;
  const times = weightAt(tokens, b, a) / weightAt(tokens, a, a);
  if (!(times !== 1 && times < mostTimes && times > 1 / mostTimes)) return null;
  const others = rowsOf(tokens, name, tokens.length).filter(
    ({ figure }) => figure < sentence.from || figure >= sentence.to,
  );
  const [row, ...more] = others;
  const listed = tokens[row?.figure ?? -1];
  const isOf = (k: number): boolean =>
    row !== undefined && isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, k, row.figure));
  if (more.length > 0 || (row && !isOf(a) && !isOf(b))) return null;
  const quantity = { ...alike(now.quantity, was.quantity), numbers: was.quantity.numbers };
  tokens[b] = asAside(now, 'said of what went in');
  // the list has it, too
  if (row && isPlain(listed)) {
    tokens[a] = asAside(was, 'said of what went in');
    tokens[at('f')] = asFiller(name);
    tokens[row.figure] = { ...listed, quantity: { ...quantity, numbers: listed.quantity.numbers } };
  } else tokens[a] = { ...was, quantity };
  const stand = tokens[a - 1];
  if (!row && at('f') < a - 1 && stand) {
    tokens[at('f')] = asFiller(name);
    tokens[a - 1] = { ...(name as Name), from: stand.from, to: stand.to };
  }
  for (let k = span.from; k < span.to; k++) {
    const one = tokens[k];
    if (one?.t === 'name' && one.meaning.kind === 'role') tokens[k] = asFiller(one);
  }
  return {
    text: `I took ${written(now.quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says what was put in.`,
    gone: [was.quantity],
    from: span.from,
    to: span.to,
    settles: true,
  };
}

/** The list with what was put in. */
export const paperOrPot = (cut: Cut): Heard =>
  hearNotes<'said'>(cut, {
    cues,
    isWorth: ({ figures, names }) => figures > 1 && names > 0,
    patterns,
    isOpen: ({ text }, match) => open.test(match[0]) || elsewhen.test(text.slice(0, match.index)),
    hear: (_, note) => hear(note.tokens, note),
  });
