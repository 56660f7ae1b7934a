/**
 * What somebody replied to a question for the lye, where the writer tells behind it what was taken: in a quoted thread, "> …
 * 150 g lye. Ok?", "> No, I'd take 138 g", and in a chat, "How much lye?", "I'd go 102 g", "I took 99 g in the end".
 */
import type { Aside } from './book-columns.ts';

interface Without {
  readonly text: string;
  readonly told: readonly Aside[];
}

const why = 'what somebody replied';
const weight = /\d+(?:[.,]\d+)? ?(?:grams?|gr|g|kg|oz|ounces?|lbs?)\b/gi;
const weightsIn = (text: string): readonly string[] => text.match(weight) ?? [];
const advises =
  /\b(?:i['’]?d|i would|you (?:could|should|need)|better|try|take|use|go (?:with|for)|too (?:much|little|low|high)|not enough|more like|should be|say|reckon|about)\b|^\W*\d/i;
/** The figure that was advised is the one that was taken. */
const followed =
  /\b(?:(?:did|done|took|taken|used|doing|went with|going with|followed|changed|take|use) (?:that|so|it|this|yours|your (?:advice|figure|number|lye))|as you (?:said|say|told)|like you (?:said|say)|your (?:advice|figure|number)|will do)\b/i;
const mostFigures = 2;

/** A quoted reply of few figures behind a quoted recipe. */
function withoutQuoted(post: string): Without | null {
  const lines = post.split('\n');
  const blocks: { readonly from: number; to: number }[] = [];
  for (const [k, line] of lines.entries()) {
    if (!/^[ \t]*>[ \t>]*\S/.test(line)) continue;
    const last = blocks.at(-1);
    if (last?.to === k) last.to = k + 1;
    else blocks.push({ from: k, to: k + 1 });
  }
  const [first, reply, ...more] = blocks;
  if (!first || !reply || more.length > 0) return null;
  const said = (from: number, to: number): string =>
    lines
      .slice(from, to)
      .join('\n')
      .replace(/^[ \t]*>[ \t]*/gm, '');
  const [recipe, answer] = [said(first.from, first.to), said(reply.from, reply.to)];
  const own = lines.filter((line, k) => (k < first.from || k >= reply.to) && !/^[ \t]*>/.test(line)).join('\n');
  const figures = weightsIn(answer);
  const isReply = weightsIn(recipe).length > mostFigures && figures.length > 0 && figures.length <= mostFigures;
  if (!isReply || !advises.test(answer) || weightsIn(own).length === 0 || followed.test(own)) return null;
  return {
    text: lines.filter((_, k) => k < reply.from || k >= reply.to).join('\n'),
    told: [{ text: answer, why }],
  };
}

const label = /^[ \t]*(?<who>\p{L}[\p{L}.'’]{0,14})(?: \d{1,2}[:.]\d\d(?: ?[ap]m)?)?(?: ?:| -)[ \t]+(?=\S)/u;
const asksLye = /\b(?:how much|what|how many grams(?: of)?) (?<lye>lye|naoh|koh|caustic(?: soda)?|sodium hydroxide)\b/i;
const alkali = /\b(?:lye|naoh|koh|caustic(?: soda)?|sodium hydroxide)\b/i;
const took =
  /(?<=\b(?:took|take|taking|used|using|went with|going with|put in|did|weighed(?: out)?|poured in|made it with|had)(?: (?:only|just|about|exactly|out|in))* )\d+(?:[.,]\d+)? ?(?:grams?|gr|g|oz|ounces?)(?= ?(?:[.,;!)]|$|in the end|then|now|anyway|instead|and\b|with\b|at last|finally|though))/im;
const nobody = /^(?:lye|naoh|koh|water|oil|oils|fat|fats|note|ps|edit|update|q|a|question|answer|total|superfat)$/i;

/** In a chat, what another one proposed of the lye that its first speaker asked for. */
function withoutProposed(post: string): Without | null {
  if (!asksLye.test(post)) return null;
  const lines = post.split('\n');
  const who = lines.map((line) => label.exec(line)?.groups?.['who']?.toLowerCase() ?? null);
  const asked = lines.findIndex((line, k) => who[k] !== null && asksLye.test(line));
  const writer = who[asked] ?? null;
  if (writer === null || nobody.test(writer)) return null;
  const said = (k: number): string => (lines[k] ?? '').replace(label, '');
  const isOther = (k: number): boolean =>
    k > asked && who[k] != null && who[k] !== writer && !nobody.test(who[k] ?? '');
  const isProposed = (k: number): boolean =>
    isOther(k) && weightsIn(said(k)).length === 1 && advises.test(said(k)) && said(k).length <= longest;
  const proposals = lines.flatMap((_, k) => (isProposed(k) ? [k] : []));
  const [first = -1, ...others] = proposals;
  if (first < 0 || lines.some((_, k) => isOther(k) && !proposals.includes(k) && weightsIn(said(k)).length > 0))
    return null;
  const own = lines.findIndex(
    (_, k) => k > first && who[k] === writer && (took.test(said(k)) || followed.test(said(k))),
  );
  if (own < 0 || alkali.test(said(own))) return null;
  const lye = asksLye.exec(lines[asked] ?? '')?.groups?.['lye'] ?? 'lye';
  const isTaken = took.test(said(own));
  if (!isTaken && (others.length > 0 || otherwise.test(said(own)))) return null;
  const [figure = ''] = weightsIn(said(first));
  const text = lines
    .map((line, k) => {
      const spoken = isOther(k) || who[k] === writer ? said(k) : line;
      if (k !== own) return spoken;
      return isTaken ? spoken.replace(took, (one) => `${one} ${lye}`) : `${figure} ${lye}. ${spoken}`;
    })
    .filter((_, k) => !proposals.includes(k))
    .join('\n');
  return { text, told: isTaken ? proposals.map((k) => ({ text: said(k), why })) : [] };
}
const longest = 90;
const otherwise = /\b(?:more|less|but|except|half|not|nt|almost|nearly)\b|n['’]t\b/i;

/** The post without what was replied. */
export function withoutReplies(post: string): Without {
  const nothing = { text: post, told: [] };
  if (!post.includes('\n')) return nothing;
  return (post.includes('>') ? withoutQuoted(post) : null) ?? withoutProposed(post) ?? nothing;
}
