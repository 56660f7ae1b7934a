/**
 * "Hang on, the tin only had 780 in it", "850 g (ran out, only 780)", "sorry, short on olive, it's 780", "I had just 280 g
 * of water left so that's what went in": there was less of something than the post said before. The smaller weight counts.
 */

import { fillingIn } from '../taken-back/changes.ts';
import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import type { Quantity } from '../words/quantities.ts';
import { isIngredient, massOf, wordOrStop } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { figureOf, thingOf, type Weighed, weighedIn } from '../words/weighed.ts';
import type { Heard } from './heard.ts';

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set(
  'left remaining only just short empty all ran gave ended enough went gone got again afresh anew'.split(' '),
);

const pot = '(?:tin|bottle|jar|tub|bag|can|pack|packet|carton|container|block|jug|bucket|box|brick|drum|shop)';
const got =
  '(?:had|have|got|gave|held|contained|yielded|found|there (?:was|were|is|are)|squeezed|scraped|managed|left|weighed)';
const ofIt = '(?:of (?:the |my |our |that )?(?:@ )?|@ )?';
const left = '(?:left|remaining)(?! over)(?: in (?:it|there|(?:the|my|its) [a-z]+))?';
/** "So that's what went in", "and I used that". */
const takenSo =
  '(?:[,:-] )?(?:(?:so|and|then|therefore|hence) (?:(?:thats|that|this|it|its|those|they|which) (?:(?:is|was|were|are|all|just|only|what|had to|all that|i|we|ll|ill|will|shall|(?:am )?going to) )*(?:went|goes|go|used|use|put|took|take|poured|got)|(?:i|we) (?:just |only )?(?:used|took|put|poured|went with|use|take) (?:that|it|this|those|all of it)\\b(?! (?:up|away|back|in a|in an|for)\\b))|(?:that|which) (?:is|was) what (?:went|i|we))';
const patterns: readonly RegExp[] = [
  `\\b(?:i|we|there) (?:only |just )?(?:had|was|were) (?:only |just |but )+(?:about )?(?<less>#) ${ofIt}${left}\\b`,
  `\\b(?:i|we|there) (?:only |just )+(?:had|was|were) (?:about )?(?<less>#) ${ofIt}${left}\\b`,
  `\\b(?:had|have|has|got|was|were|is|are|theres|held) (?:only |just |but |about )*(?<less>#) ${ofIt}${left} ${takenSo}`,
  `\\b${pot} (?:is |was )?(?:only |just )(?:${got} )?(?:about )?(?<less>#)`,
  `\\b${pot} (?:${got} )(?:about )?(?<less>#) (?:only|and no more|no more|, no more|and that was it)\\b`,
  `\\b(?:i|we|there) (?:only |just )${got} (?:about )?(?<less>#) (?:of (?:it|that|them)\\b|left\\b|in (?:it|there)\\b|$|[.,!;)])`,
  `^[([] (?:only|just) (?:about |had |got )*(?<less>#) (?:in|left|there|of it|to be had|[)\\]])`,
  `\\b(?:theres|there is|there was|there were) only (?:about )?(?<less>#) (?:of (?:the |my )?@ )?(?:$|[.,!;)])`,
  `\\b(?:found|had|got|there (?:was|were)) (?:only|just) (?:about )?(?<less>#) (?:of )?(?:the |my )?@ (?:left )?in (?:the|my|its|that) (?:[a-z]+ )?${pot}\\b`,
  `\\bcould only (?:get|find|squeeze|scrape|take|put) (?:out )?(?:about )?(?<less>#)`,
  `\\b(?:ran out|run out|short|running out)\\b[^#]{0,30}\\b(?:only|just|at|its|it is|so) (?:got |had |have |about |to )*(?<less>#)`,
  `(?<less>#) (?:of (?:the |it |that )?(?:@ )?)?(?:was|is|were|are) all (?:that )?(?:i|we|there|the|it|that)\\b`,
  `\\b(?:is|was|are|were|its) (?:only |just )(?:about )?(?<less>#) (?:, |- )?(?:that|which|it) (?:was|is) all\\b`,
  `\\b(?:there (?:was|were)) only (?:about )?(?<less>#) (?:of (?:the |my )?@ )?(?:left|there|in)\\b`,
  `\\bonly (?:about )?(?<less>#) (?:of (?:the |my )?@ )?(?:went in|made it in)\\b`,
  `\\bweighed (?:it|that|them) (?:all )?(?:again|afresh|anew)\\b[^#.;]{0,30}?(?:: |\\b(?:theres|there (?:was|is|were)|its|it (?:is|was)|that (?:is|was)|got|is|was|had|at) )(?:only |just |still |now |about )*(?<less>#)`,
].map((pattern) => new RegExp(pattern, 'd'));
/** "So 55 g really went in", where the sentence, or the one before, says why it was not all. */
const wentIn =
  /(?<less>#) (?:of (?:it|that|them) )?(?:(?:had|have|has|really|actually|only|just|finally|in the end) )*(?:went|gone|goes|got|made it) in(?:to)?\b/d;
const notAll =
  /\b(?:plan(?:ned)?|wanted|meant|intended|hoped|supposed|(?:was|were) (?:going )?to be|spil(?:led|t)|stuck|stayed|clung|sticky|lost|layer|scraped?|really|actually)\b/;
const open = /\?|\b(?:if|would|might|may|maybe|next|last (?:time|batch|year|month|week))\b/;
const elsewise =
  /\?|\b(?:if|would|might|may|maybe|next|last (?:time|batch|year|month|week)|(?:in|last|that|back in) (?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december|#)|usually|normally|used to|once|never|should|yesterday|he|she|they|after|afterwards|bought|fetched|ordered|opened)\b/;

/** Shares of what was said that may have been there instead. */
const leastThere = 0.4;

const wordOf = (token: Token | undefined): string => (token && 'text' in token ? token.text : '');

/** What may be less than was said. */
const kinds = /^(?:fat|alkali|liquid|water)$/;

/** "780 of the olive", "the olive is just 780": what is named beside the smaller weight, without another of its own. */
function namedIn(tokens: readonly Token[], { from, to }: Sentence, less: number): string | null {
  const ids = new Set<string>();
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (token?.t !== 'name' || !isIngredient(token)) continue;
    const figure = figureOf(tokens, k);
    if (figure < 0 || figure === less) ids.add(thingOf(token));
  }
  const [only] = ids;
  return ids.size === 1 ? (only ?? null) : ids.size === 0 ? '' : null;
}

/** "I'd planned 40 g but the jar only gave 25 g, so 25 g it was", of what was named without a weight right before. */
const plannedMore =
  /^[^#@?]{0,30}\b(?:planned|wanted|meant|intended|hoped for)(?: (?:to (?:use|add|take|put in)|on))? (?<was>#) (?:(?:of (?:it|that)|,|-|but|and|though|however|the|my|[a-z]+) ){0,5}(?:only|just) (?:had|have|gave|got|held|contained|yielded|found)? ?(?:about )?(?<less>#)(?! (?:of (?!it|that)|@))[^#@?]*(?<again>#)?[^#@?]*$/d;

/** It went in otherwise, or not at all. */
const otherwise =
  /\b(?:out|skipped|none|not|didnt|instead|place|without|never|dropped|bought|more|rest|missing|replac\w*|made up|topped|filled)\b/;
const nothingElse = /\b(?:nothing|and no more)(?: else)?(?: (?:in|for) (?:its place|it))?\b/;

/** The tokens with such a weight behind the name. */
function plannedAlone(cut: Cut, told: PutRight[]): readonly Token[] {
  const { tokens } = cut;
  let out: Token[] | null = null;
  const sentences = sentencesOf(cut);
  sentences.forEach((sentence, k) => {
    if (sentence.figures < 2 || sentence.names > 0 || (sentence.cues & cue.less) === 0) return;
    const found = plannedMore.exec(sentence.text)?.indices?.groups;
    const [was, less, again] = ['was', 'less', 'again'].map((group) => sentence.tokenAt(found?.[group]?.[0] ?? 0));
    const before = sentences[k - 1];
    if (!found || was === undefined || less === undefined || again === undefined || !before) return;
    const behind = sentence.text.slice(sentence.placeOf(less)) + (sentences[k + 1]?.text ?? '');
    if (otherwise.test(behind.replace(nothingElse, ''))) return;
    const at = before.to - 2;
    const [name, stop] = [tokens[at], tokens[at + 1]];
    if (!isIngredient(name) || !/^(?:fat|alkali)$/.test(name.meaning.kind) || stop?.t !== 'sign') return;
    const [more, now] = [tokens[was], tokens[less]];
    if (
      !massOf(more) ||
      !massOf(now) ||
      figureOf(tokens, at) >= 0 ||
      weighedIn(tokens, 0, at, kinds).some(({ id }) => id === thingOf(name))
    )
      return;
    const share = alike(now.quantity, more.quantity).value / more.quantity.value;
    if (!(share >= leastThere && share < 1)) return;
    const same = tokens[again];
    if (found['again'] && !(massOf(same) && same.quantity.value === now.quantity.value)) return;
    out ??= [...tokens];
    out[at + 1] = { ...now, from: stop.from, to: stop.to, quantity: countsNow(now, more) };
    out[was] = asAside(more, 'planned');
    out[less] = wordOrStop(now);
    if (found['again'] && massOf(same)) out[again] = asAside(same, 'said before');
    told.push({
      text: `I took ${written(now.quantity)} of ${name.text}, not ${written(more.quantity)}, as the post says that there was no more.`,
      gone: [more.quantity],
      from: sentence.from,
      to: sentence.to,
      settles: true,
    });
  });
  return out ?? tokens;
}

/** The weights of which there was less, as they were there. */
export function lessThere(whole: Cut): Heard {
  if (!whole.tokens.some((token) => token.t === 'word' && cues.has(token.text)))
    return { tokens: whole.tokens, told: [] };
  const told: PutRight[] = [];
  const cut = { ...whole, tokens: plannedAlone(whole, told) };
  const { tokens } = cut;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  sentences.forEach((sentence, k) => {
    if (sentence.figures === 0 || !sentence.retells || (sentence.cues & cue.less) === 0) return;
    const tale = `${sentences[k - 1]?.text ?? ''} ${sentence.text}`;
    const went = wentIn.test(sentence.text) && notAll.test(tale) && !open.test(sentence.text);
    if (!went && elsewise.test(sentence.text)) return;
    // what fills up is reckoned from the two
    if (fillingIn(sentence) !== null || (sentences[k + 1] && fillingIn(sentences[k + 1] as Sentence) !== null)) return;
    for (const pattern of went ? [wentIn] : patterns) {
      const place = pattern.exec(sentence.text)?.indices?.groups?.['less']?.[0];
      if (place === undefined) continue;
      const less = sentence.tokenAt(place);
      const row = rowOf(tokens, sentences, k, less);
      const [now, was] = [tokens[less], row ? tokens[row.figure] : undefined];
      if (!row || !massOf(now) || !massOf(was)) continue;
      out ??= [...tokens];
      // named once more, it stands where it is said, too
      const isNamed = namedIn(tokens, sentence, less) === row.id;
      out[less] = isNamed ? { ...now, quantity: countsNow(now, was) } : wordOrStop(now);
      out[row.figure] = { ...was, quantity: countsNow(now, was) };
      const name = wordOf(tokens[row.at]);
      told.push({
        text: `I took ${written(now.quantity)} of ${name}, not ${written(was.quantity)}, as the post says that there was no more.`,
        gone: [was.quantity],
        from: sentence.from,
        to: sentence.to,
        settles: true,
      });
      return;
    }
  });
  return { tokens: out ?? tokens, told };
}

const countsNow = ({ quantity: now }: Figure, { quantity: was }: Figure): Quantity => ({
  ...alike(now, was),
  upTo: null,
});

/** The row of which there was less; null where it cannot be known. */
function rowOf(tokens: readonly Token[], sentences: readonly Sentence[], k: number, less: number): Weighed | null {
  const now = tokens[less];
  const sentence = sentences[k];
  if (!massOf(now) || !sentence) return null;
  const fits = ({ figure }: Weighed): boolean => {
    const was = tokens[figure];
    if (!massOf(was)) return false;
    const value = alike(now.quantity, was.quantity).value / was.quantity.value;
    return (now.quantity.dim === 'bare' || now.quantity.dim === was.quantity.dim) && value >= leastThere && value < 1;
  };
  const own = weighedIn(tokens, sentence.from, less, kinds).filter(({ figure }) => figure !== less);
  const last = own.at(-1);
  const named = namedIn(tokens, sentence, less);
  if (named === null) return null;
  if (named === '' && last) return fits(last) ? last : null;
  const since = sentences.findLast((one, at) => at < k && one.names + one.figures > 0)?.from ?? 0;
  const before = weighedIn(tokens, named === '' ? since : 0, sentence.from, kinds);
  const isBracket = /^[([]/.test(sentence.text);
  // "olive 400 g... the can only gave 310": of what was said last, where it may be
  const goesOn = /^[.] ?$|[.] [.] ?$/.test(sentences[k - 1]?.text ?? '') && before.slice(-1).some(fits);
  const rows =
    named === ''
      ? (isBracket || goesOn ? before.slice(-1) : before).filter(fits)
      : before.filter(({ id }) => id === named);
  const [row, ...more] = rows;
  return row && more.length === 0 && fits(row) ? row : null;
}
