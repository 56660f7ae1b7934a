/** So much of one fat that became another: "moved 100 g from the olive to the shea, which makes it 400 g olive, 200 g shea". */
import { isFat, massOf, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

const moving = /^(?:moved|shifted|switched|transferred|took)$/;
const light = /^(?:the|my|of|away|over)$/;

const skip = (tokens: readonly Token[], from: number): number => {
  let at = from;
  while (light.test(spoken(tokens[at]))) at++;
  return at;
};

/** The tokens without what was moved, where both fats are weighed besides as they are now. */
export function shifted(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const figure = tokens[k];
    if (!massOf(figure) || !moving.test(spoken(tokens[k - 1]))) continue;
    if (!/^(?:from|off|out)$/.test(spoken(tokens[k + 1]))) continue;
    const goes = skip(tokens, k + 2);
    if (!/^(?:to|into|onto|over)$/.test(spoken(tokens[goes + 1]))) continue;
    const comes = skip(tokens, goes + 2);
    const [from, to] = [tokens[goes], tokens[comes]];
    if (!isFat(from) || !isFat(to) || !weighedElsewhere(tokens, goes) || !weighedElsewhere(tokens, comes)) continue;
    out ??= [...tokens];
    out[k] = asAside(figure, 'moved from one fat to the other');
    out[goes] = asFiller(from);
    out[comes] = asFiller(to);
  }
  return out ?? tokens;
}
