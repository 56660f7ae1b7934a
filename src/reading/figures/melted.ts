/** "250 ml liquid coconut oil (melted)": what has to melt is the solid oil, and not the one that stays liquid. */
import { isAny, isFat, isMark, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** Liquid by its kind, and the one that is liquid only when it is warm. */
const solidOf: Readonly<Record<string, string>> = { 'mct-oil': 'coconut-oil' };
const melting = /^(?:melt|melts|melted|melting|warm|warmed|heated|runny|heat|heatwave|summer)$/;
const reach = 12;

export function melted(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  tokens.forEach((token, k) => {
    if (token.t !== 'name' || token.meaning.kind !== 'fat' || !/\bliquid\b/i.test(token.text)) return;
    const id = solidOf[token.meaning.id];
    if (id === undefined || !(isMeltedAt(tokens, k) || isMeltedElsewhere(tokens, id))) return;
    out ??= [...tokens];
    out[k] = { ...token, meaning: { kind: 'fat', id }, meant: id };
  });
  return out ?? tokens;
}

/** Said right before it, or behind it in its row or in a bracket there. */
function isMeltedAt(tokens: readonly Token[], k: number): boolean {
  let from = k;
  while (k - from < 3 && !isStop(tokens[from - 1]) && tokens[from - 1]?.t !== 'quantity') from--;
  let to = k + 1;
  const ends = (at: number): boolean => isStop(tokens[at]) || (isMark(tokens[at], ',') && !isMark(tokens[k + 1], '('));
  while (to - k < reach && !ends(to) && !isMark(tokens[to], ')')) to++;
  return isAny(tokens, from, to, (one) => melting.test(spoken(one)));
}

/** "Melted the coconut", which nothing weighs. */
const isMeltedElsewhere = (tokens: readonly Token[], id: string): boolean =>
  tokens.some(
    (one, at) =>
      isFat(one) &&
      one.meaning.id === id &&
      tokens[at + 1]?.t !== 'quantity' &&
      [at - 1, at - 2].some((before) => melting.test(spoken(tokens[before]))),
  );
