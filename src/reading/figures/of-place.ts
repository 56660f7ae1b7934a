/** "My sister's cafe", "for the café in town": where the soap goes, and no coffee. */
import { endsDotted, isIngredient, isMark, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const house = /^caf[eé]s?$/i;
const whose =
  /^(?:a|the|my|our|her|his|their|local|little|small|new|old|nearby|village|corner|[a-z]+'s|sisters|friends|mothers|mums|brothers|neighbours|daughters)$/;

/** It is weighed beside. */
const isWeighed = (tokens: readonly Token[], k: number): boolean => {
  const before = spoken(tokens[k - 1]) === 'of' ? tokens[k - 2] : tokens[k - 1];
  const at = /^(?:is|was|weighs)$/.test(spoken(tokens[k + 1])) || isMark(tokens[k + 1], ':=') ? k + 2 : k + 1;
  return (before?.t === 'quantity' && !endsDotted(before)) || tokens[at]?.t === 'quantity';
};

export function ofPlace(tokens: readonly Token[]): readonly Token[] {
  const isHouse = (token: Token, k: number): boolean =>
    isIngredient(token) &&
    token.meaning.kind === 'liquid' &&
    house.test(token.text) &&
    whose.test(spoken(tokens[k - 1])) &&
    !isWeighed(tokens, k);
  return tokens.some(isHouse)
    ? tokens.map((token, k) => (token.t === 'name' && isHouse(token, k) ? asFiller(token) : token))
    : tokens;
}
