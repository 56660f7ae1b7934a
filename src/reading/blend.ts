/** Fats that were mixed beforehand in stated shares, and how much was taken of the mixture. */
import type { Item } from './items.ts';
import { sharedRun } from './parallel.ts';
import type { Token } from './tokens.ts';

type Thing = Extract<Item, { kind: 'thing' }>;

const wordAt = (token: Token | undefined): string =>
  token?.t === 'word' || token?.t === 'name' ? token.text.toLowerCase() : '';

/** "of the blend", "out of the bucket", "from my mix", "of that". */
function isOfBlend(tokens: readonly Token[], to: number): boolean {
  const of = wordAt(tokens[to]) === 'out' ? to + 1 : to;
  if (!/^(of|from)$/.test(wordAt(tokens[of]))) return false;
  const named = /^(the|my|this|that|our)$/.test(wordAt(tokens[of + 1])) ? tokens[of + 2] : tokens[of + 1];
  const pot = named?.t === 'name' && named.meaning.kind === 'role' && named.meaning.id === 'pot';
  return pot || /^(blend|oil blend|mix|mixture|oil mix|masterbatch|premix|that|it|bucket|oils?)$/.test(wordAt(named));
}

const isBlend = ({ named: { meaning, text } }: Thing): boolean =>
  meaning.kind === 'ambiguous' && /\b(blend|blended|mix|mixed)\b/i.test(text);

/** Where shares of fats make the whole: the blend is what these fats are called, and what is taken of it their weight. */
export function asBlend(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const taken = items.filter(
    (item) => item.kind === 'amount' && item.quantity.dim === 'mass' && isOfBlend(tokens, item.to),
  );
  const named = items.some((item) => item.kind === 'thing' && isBlend(item));
  if ((taken.length === 0 && !named) || !items.some((_, k) => sharedRun(items, k) !== null)) return items;
  const [only] = taken;
  return items.flatMap((item): Item[] => {
    if (item.kind === 'thing' && isBlend(item))
      return [{ ...item, named: { ...item.named, meaning: { kind: 'role', id: 'pot' } } }];
    if (item !== only || taken.length > 1 || item.kind !== 'amount') return [item];
    const { to } = item;
    const fats = {
      meaning: { kind: 'role', id: 'total-fats' },
      text: 'fats',
      how: 'name',
      meant: 'total fats',
    } as const;
    return [
      { ...item, total: true },
      { kind: 'thing', named: fats, from: to, to },
    ];
  });
}
