/** "One part = 75 g", "a part was 150 g today": parts of a recipe are so many times that weight. */
import { isEach, spoken } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';

const isParts = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'parts';
const isMass = (token: Token | undefined): token is Figure => token?.t === 'quantity' && token.quantity.dim === 'mass';
const isSign = (token: Token | undefined, text: string): boolean => token?.t === 'sign' && token.text === text;
/** A single part, as a figure or by its word. */
const isOnePart = (tokens: readonly Token[], k: number): boolean => {
  const token = tokens[k];
  if (isParts(token)) return token.quantity.value === 1;
  return /^parts?$/i.test(spoken(token)) && /^(?:a|one|1|each|every|per|the|my)$/i.test(spoken(tokens[k - 1]));
};
const linking = /^(?:is|was|being|of|weighs|weighed|makes|equals|at|about|here|today|for|me|means|meaning|will|be)$/;
const longestLink = 4;

/** The figure that says what a part weighs; null where none does, or two differ. */
function sizeOf(tokens: readonly Token[]): number | null {
  const found: number[] = [];
  tokens.forEach((_, k) => {
    if (!isOnePart(tokens, k)) return;
    for (let at = k + 1; at <= k + 1 + longestLink; at++) {
      const token = tokens[at];
      // "1 part 60 g olive" is no size of all of them
      if (isMass(token)) {
        if ((at > k + 1 || !isParts(tokens[k])) && !isEach(tokens[at + 1])) found.push(at);
        return;
      }
      if (!isSign(token, '=') && !isSign(token, ':') && !linking.test(spoken(token))) return;
    }
  });
  const [first] = found;
  return found.length === 1 && first !== undefined ? first : null;
}

export function partWeighs(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isParts)) return tokens;
  const at = sizeOf(tokens);
  const size = at === null ? undefined : tokens[at];
  if (at === null || !isMass(size)) return tokens;
  const behind = tokens[at + 1];
  // "1 part = 75 g olive": of that one
  if (behind?.t === 'name' && behind.meaning.kind === 'fat' && !size.quantity.text.endsWith('.')) return tokens;
  return tokens.map((token, k) => {
    if (k === at) return asAside(size, 'weight of a part');
    if (!isParts(token)) return token;
    if (k < at && k >= at - longestLink && isOnePart(tokens, k)) return asAside(token, 'weight of a part');
    const { quantity } = token;
    const value = quantity.value * size.quantity.value;
    const text = `${quantity.text} of ${size.quantity.text}`;
    return { ...token, quantity: { ...size.quantity, value, other: null, text, numbers: quantity.numbers } };
  });
}
