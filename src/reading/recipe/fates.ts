import type { Fate } from '../reading.ts';
import { digitsIn } from '../text/letters.ts';
import { damaged } from '../words/aside.ts';
import { isWhole } from '../words/numbers.ts';
import type { Assembly } from './rows.ts';

const reasons: ReadonlyMap<string, string> = new Map([
  ['time', 'a time'],
  ['length', 'a size'],
  ['temperature', 'a temperature'],
]);

/** `4OO`: one figure to the reader, and `4` to who counts digits. */
const ofDigits = (fate: Fate): readonly Fate[] => (fate.text.match(/\d+/g) ?? []).map((text) => ({ ...fate, text }));

/**
 * What became of every figure of the post, in order. A figure that nothing has used or set aside by now makes the post
 * unclear: none is ever dropped.
 */
export function settleFates(assembly: Assembly): Fate[] {
  const { tokens, prims, mended, struck, dropped } = assembly.source;
  const set = (k: number, fate: Fate['fate'], why: string): void => {
    const prim = prims[k];
    if (prim) assembly.fates[k] = { text: prim.raw, fate, why };
  };
  for (const token of tokens) {
    if (token.t === 'aside') {
      if (token.reason === damaged)
        assembly.doubts.push({ id: 'unplaced', said: token.numbers.map((k) => prims[k]?.raw ?? '').join(' … ') });
      for (const k of token.numbers) set(k, token.reason === damaged ? 'unclear' : 'aside', token.reason);
    }
    if (token.t === 'quantity' && token.quantity.dim !== 'mass') {
      const reason = reasons.get(token.quantity.dim);
      if (reason) assembly.fate(token.quantity, 'aside', reason);
    }
    for (let k = token.from; k < token.to; k++) {
      if (prims[k]?.kind !== 'number' || assembly.fates[k]) continue;
      if (token.t === 'name') set(k, 'used', `part of the name "${token.text}"`);
      else if (dropped.has(k)) set(k, 'aside', 'taken out by its writer');
      else if (token.t === 'quantity' && token.quantity.dim === 'ratio') set(k, 'aside', 'a remark in brackets');
      else if (token.t === 'quantity' && token.quantity.unit && !token.quantity.numbers.includes(k))
        set(k, 'used', 'part of a unit');
      else {
        set(k, 'unclear', 'no name takes it');
        assembly.doubts.push({ id: 'unplaced', said: prims[k]?.raw ?? '' });
      }
    }
  }
  const fates: Fate[] = [];
  for (const fate of assembly.fates)
    if (fate && !isWhole(fate.text) && /[oil]/i.test(fate.text)) fates.push(...ofDigits(fate));
    else if (fate) fates.push(fate);
  // a word of digits was put together of its pieces
  for (const prim of mended ? prims : [])
    for (const text of digitsIn(prim)) fates.push({ text, fate: 'used', why: `part of the name "${prim.raw}"` });
  for (const passage of struck)
    for (const text of passage.match(/\d+(?:[.,]\d+)*/g) ?? []) fates.push({ text, fate: 'aside', why: 'crossed out' });
  return fates;
}
