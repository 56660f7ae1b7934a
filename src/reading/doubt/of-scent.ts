/** A sentence that doubts the scent or the colour alone. */
import type { Sentence } from '../text/sentences.ts';
import type { Token } from '../words/tokens.ts';

/** "What I'm not sure about is the scent, it was either 20 or 25 g": of nothing that the lye is for. */
export function isOfScent(tokens: readonly Token[], { from, to }: Sentence): boolean {
  const names = tokens.slice(from, to).filter((one) => one.t === 'name' && one.meaning.kind !== 'role');
  const [first] = names;
  return first?.t === 'name' && names.every((one) => one.t === 'name' && isAside.test(one.meaning.kind));
}
const isAside = /^(?:scent|additive)$/;
