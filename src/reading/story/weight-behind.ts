/**
 * "I saw the castor still sitting there, 60 g, so in it went": the weight of a fat that stands behind what is told of it, and
 * beside no other name. It stands beside its name then, for the rules that hear what became of it.
 */
import { once } from '../once.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { isPlain, rowsOf } from './tale.ts';

const cues: ReadonlySet<string> = new Set('found find saw see noticed spotted discovered forgot forgotten'.split(' '));
const behind = once(
  () =>
    /\b(?:found|find|saw|see|noticed|spotted|discovered|forgot|forgotten) (?:(?:about|the|my|that|bowl|cup|jar|of|with|all) )*(?<f>@) (?:(?:still|just|all|was|is|which|that|sitting|standing|stood|sat|there|untouched|waiting|unmelted|in|on|by|its|the|my|[a-z]+) ){1,8}[,(] (?:about |all )?(?<n>#)(?= [,.;!)]| ?$)/d,
);

const stood = /\b(?:still|standing|sitting|untouched|waiting|forgot|forgotten)\b/;
const open = /\b(?:maybe|perhaps|next|would|should|if|or|shop|store|market|bought|buy|cost|last)\b/;

/** The tokens with such a weight behind its name. */
export function weightBehind(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.has(spoken(token)))) return tokens;
  for (const sentence of sentencesOf(cut)) {
    const at = sentence.figures === 0 ? undefined : behind().exec(sentence.text)?.indices?.groups;
    if (!at?.['f'] || !at['n']) continue;
    if (!stood.test(sentence.text) || open.test(sentence.text)) continue;
    const [name, figure] = [sentence.tokenAt(at['f'][0]), sentence.tokenAt(at['n'][0])];
    const [own, weight, place] = [tokens[name], tokens[figure], tokens[name + 1]];
    if (!isFat(own) || !isPlain(weight) || place?.t !== 'word') continue;
    if (rowsOf(tokens, own, tokens.length).length > 0) continue;
    const out = [...tokens];
    out[name + 1] = { ...weight, from: place.from, to: place.to };
    out[figure] = asFiller(weight as Figure);
    return out;
  }
  return tokens;
}
