/** "There was 17 g still missing, so I dissolved another 17 g": what is missing is said before it is put in. */
import { isWeight, spoken } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';

const missing = /^(?:missing|short|lacking|wanting)$/;
const between = /^(?:of|it|the|lye|were|was|is|are|still|that|which|too|little|about|by|only|just)$/;
const again = /^(?:another|the|those|these|that|missing|remaining|extra|other|more|additional|last)$/;
const near = 4;
const farthest = 25;

/** It is told to be missing, right behind the figure or right before. */
function isMissing(tokens: readonly Token[], k: number): boolean {
  for (const step of [1, -1])
    for (let at = k + step; Math.abs(at - k) <= near; at += step) {
      const word = spoken(tokens[at]);
      if (missing.test(word)) return true;
      if (!between.test(word)) break;
    }
  return false;
}

/** The tokens with such figures set aside. */
export function missingSaid(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some((token) => missing.test(spoken(token)))) return tokens;
  let out: Token[] | null = null;
  tokens.forEach((token, k) => {
    if (!isWeight(token) || !isMissing(tokens, k)) return;
    for (let at = k + 1; at < tokens.length && at - k <= farthest; at++) {
      const one = tokens[at];
      if (!isWeight(one)) continue;
      const isSame = one.quantity.value === token.quantity.value && again.test(spoken(tokens[at - 1]));
      if (isSame && !isMissing(tokens, at)) {
        out ??= [...tokens];
        out[k] = asAside(token, 'said before');
      }
      return;
    }
  });
  return out ?? tokens;
}
