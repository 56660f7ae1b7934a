/**
 * "I wrote down 300 g palm, but looking at the tub it's palm kernel oil that I weighed out": what the writer took it for, and
 * what went in. It counts with the weight that was written; where nobody says in whose place it came, it is asked about.
 */
import { once } from '../once.ts';
import { written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { rowsBefore } from './tale.ts';

const cues: ReadonlySet<string> = new Set('that what which'.split(' '));
/** "It's palm kernel oil that I weighed out". */
const found = once(
  () =>
    /\b(?:its|it is|it was|that was|thats|that is)(?: (?:actually|really|in fact|in truth|all|the|my|some))* (?<g>@) (?:, )?(?:that|what|which) (?:(?:i|we|ive|weve) (?:(?:have|had|really|actually|just|in fact) )*(?:weighed|poured|used|took|taken|put|measured|melted|scooped|grabbed|tipped)\b|(?:really |actually )?went\b|(?:has |had |really )*(?:gone|got|landed|ended) (?:in|up)\b|(?:is|was) (?:now |really )?in\b)/dg,
);
const wrote =
  /\b(?:wrote|written|writes|noted|typed|listed|called|list|note|notes|card|sheet|says?|said|thought|believed|took it for|put down|have down)\b/;
const open = /\?|\b(?:if|might|may|maybe|perhaps|think|guess|not sure|unsure|probably|would|should)\b/;
/** Of another time, or of no soap. */
const beside =
  /\b(?:last (?:time|batch|week|month|year)|next|usually|normally|never|always|once|for the (?!soap|batch|pot)[a-z]+|mou?ld|grease|greased|lined|hands|salad|fry|frying)\b/;
/** Sentences ahead in which it was called otherwise. */
const ahead = 1;

/** The list with what was weighed in truth. */
export function otherWeighed(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => isFat(tokens[at]));
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const [match] = sentence.text.matchAll(found());
    const place = match?.indices?.groups?.['g']?.[0];
    if (!match || place === undefined) continue;
    const at = sentence.tokenAt(place);
    const name = tokens[at];
    if (beside.test(sentence.text)) continue;
    if (!isFat(name) || rows.some(({ id }) => id === thingOf(name))) continue;
    const raw = rawText(prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 1).trim();
    const begin = Math.max(0, k - ahead);
    const story = joinedAt(sentences, begin, k - begin + 1);
    if (open.test(sentence.text.slice(0, match.index + match[0].length))) {
      if (sentence.text.includes('?')) continue;
      return { ...none, unheard: raw };
    }
    const near = rows.filter((row) => Math.min(row.at, row.figure) >= sentence.from && row.at < at);
    const named = near.length > 0 ? near : rows.filter((row) => row.at >= story.from && row.at < at);
    const [row] = named;
    if (!row || named.length > 1 || !wrote.test(story.text)) return { ...none, unheard: raw };
    const [was, weight] = [tokens[row.at], tokens[row.figure] as Figure];
    const out = [...tokens];
    out[row.at] = { ...name, from: was?.from ?? 0, to: was?.to ?? 0 };
    for (let n = Math.max(row.at, row.figure) + 1; n <= at; n++)
      if (isFat(out[n]) || out[n]?.t === 'name') out[n] = asFiller(out[n] as Token);
    const text = `I took ${written(weight.quantity)} of ${name.text}, not of ${was?.t === 'name' ? was.text : ''}, as the post says what was weighed.`;
    return { tokens: out, told: [{ text, gone: [], from: sentence.from, to: sentence.to, settles: true }] };
  }
  return none;
}
