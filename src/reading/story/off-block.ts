/**
 * "I have a 2 kg block of lard. Want to use 700 g of the lard": what somebody has, and how much of it goes in. The pack is
 * no amount where the same thing is weighed again, and less of it.
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { isPlain, rowsOf, weightAt } from './tale.ts';

const packs = '(?:block|bag|tub|jar|tin|bottle|can|canister|pack|packet|bucket|brick|box|carton|slab|lump|jug|pail)';
const pack = new RegExp(
  `\\b(?:a|an|one|my|the|another|this) (?:[a-z]+ )?(?<a>#) ${packs} of (?:[a-z]+ )?(?<f>@)`,
  'dg',
);
const has =
  /\b(?:ive|ive got|i have|we have|have|weve|got|theres|there is|had|bought|owns?|sitting|standing|left|in the (?:fridge|freezer|cupboard|pantry|cellar|house))\b/;
/** All of it went in there. */
const inPot =
  /\b(?:went|goes|go|put|melted|used|poured|tipped|added|took|weighed|melt|use|add|whole|all of|in the (?:pot|pan|mix)|soap (?:with|from|of))\b/;
const goesIn =
  /\b(?:used?|using|want|need|take|took|taking|put|cut|weighed|melt|melted|make|made|making|goes?|went|going|add|added)\b/;
const besides = /\b(?:more|another|extra|further|besides|on top|as well)\b/;
const isOf = /#(?: of)? (?:(?:the|that|this|my) )*$/;

/** The tokens without what the pack holds. */
export function offBlock(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  for (const sentence of sentences) {
    const { text } = sentence;
    if (sentence.figures === 0 || sentence.names === 0 || !has.test(text) || inPot.test(text)) continue;
    for (const { indices } of text.matchAll(pack)) {
      const at = indices?.groups;
      if (!at?.['a'] || !at['f']) continue;
      const [a, f] = [sentence.tokenAt(at['a'][0]), sentence.tokenAt(at['f'][0])];
      const [weight, name] = [tokens[a], tokens[f]];
      if (!isIngredient(name) || !isFat(name) || !isPlain(weight)) continue;
      const rows = rowsOf(tokens, name, tokens.length).filter(({ figure }) => figure !== a);
      const [row, ...more] = rows;
      const on = row && sentences.find(({ from, to }) => row.at >= from && row.at < to);
      if (!on || more.length > 0 || on.from <= sentence.from || !goesIn.test(on.text) || besides.test(on.text))
        continue;
      const before = on.text.slice(0, on.placeOf(row.at));
      if (!isOf.test(before) || !(weightAt(tokens, row.figure, a) < weight.quantity.value)) continue;
      out ??= [...tokens];
      out[a] = asAside(tokens[a] as Figure, 'what the pack holds');
      out[f] = asFiller(name);
    }
  }
  return out ?? tokens;
}
