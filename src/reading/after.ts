import type { Binding } from './bind.ts';
import { linesOf } from './columns.ts';
import type { Item } from './items.ts';
import type { Token } from './tokens.ts';

const isRole = (token: Token | undefined, id: string): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === id;
const endsSentence = (token: Token | undefined): boolean =>
  token === undefined || token.t === 'line' || (token.t === 'sign' && /^[.;!?]$/.test(token.text));
const endsClause = (token: Token | undefined): boolean =>
  endsSentence(token) || (token?.t === 'sign' && (token.text === ',' || token.text === '•'));

/** Which tokens lie where the post speaks of fat added after the cook. */
export function afterScope(
  tokens: readonly Token[],
  items: readonly Item[],
  binding: Binding,
): (token: number) => boolean {
  if (!tokens.some((token) => isRole(token, 'after'))) return () => false;
  const inside = new Set<number>();
  const lines = linesOf(tokens);
  const bound = binding.groups
    .flatMap((group) => group.things)
    .map((k) => items[k])
    .filter((item) => item?.kind === 'thing' && item.named.meaning.kind === 'fat')
    .map((item) => item?.from ?? -1);
  const fatsIn = (from: number, to: number): number[] => bound.filter((at) => at >= from && at < to);
  const mark = (from: number, to: number): void => {
    for (const at of fatsIn(from, to)) inside.add(at);
  };
  lines.forEach((line, index) => {
    for (let k = line.from; k < line.to; k++) {
      if (!isRole(tokens[k], 'after')) continue;
      if (fatsIn(line.from, line.to).length === 0 && index + 1 < lines.length) {
        // a heading: the rows below, up to a blank line or the next heading
        for (let below = index + 1; below < lines.length; below++) {
          const next = lines[below];
          if (!next) break;
          const part = tokens.slice(next.from, next.to);
          const rows = fatsIn(next.from, next.to).length > 0;
          if (
            !rows &&
            (part.some((token) => token.t === 'sign' && token.text === ':') ||
              part.some((token) => isRole(token, 'before') || isRole(token, 'heading')))
          )
            break;
          mark(next.from, next.to);
          const ending = tokens[next.to];
          if (ending?.t === 'line' && ending.text === 'blank' && below > index) break;
        }
        return;
      }
      let end = k + 1;
      while (end < line.to && !endsSentence(tokens[end])) end++;
      if (fatsIn(k, end).length > 0) {
        mark(k, end);
        continue;
      }
      let begin = k - 1;
      const bracket = (token: Token | undefined): boolean =>
        token?.t === 'sign' && (token.text === '(' || token.text === ')');
      while (begin >= line.from && !endsClause(tokens[begin])) {
        if (bracket(tokens[begin]) && fatsIn(begin + 1, k).length > 0) break;
        begin--;
      }
      let fats = fatsIn(begin + 1, k);
      // "30 g shea, after the cook": the nearest fat before the comma
      if (fats.length === 0) fats = fatsIn(line.from, k).slice(-1);
      for (const at of fats) inside.add(at);
    }
  });
  // everything "after" leaves nothing to cook: only the last one can be meant
  if (bound.length > 0 && inside.size === bound.length && bound.length > 1) {
    const last = bound.at(-1) ?? -1;
    return (token) => token === last;
  }
  if (inside.size === bound.length) return () => false;
  return (token) => inside.has(token);
}
