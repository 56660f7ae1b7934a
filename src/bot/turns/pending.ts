import type { Context } from '../../commands/define.ts';
import { readCorrection } from '../../reading/amend/amend.ts';
import { amended } from '../../reading/amend/apply.ts';
import { mended } from '../../reading/amend/mend.ts';
import { both, type Settled } from '../../reading/amend/settle.ts';
import { readRecipe } from '../../reading/index.ts';
import { recipeChosen } from '../../reading/worded.ts';
import { settleOne, toCorrection, without } from './correct.ts';
import type { Pending, Session } from './store.ts';
import { completedLine } from './told.ts';
import { type Follow, plain } from './turn.ts';

/** Parts of an answer that say one thing each: "KOH, 90 %". */
const partsOf = (text: string): string[] =>
  text
    .split(/[;\n]|,(?!\d)|\band\b|\+/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

export function toPending(text: string, pending: Pending, session: Session, context: Context): Follow | null {
  const reader = context.reader();
  const { command, options, at } = pending;
  if (pending.corrects) return toCorrection(text, pending, session, context);
  const told = completedLine(at, text, context);
  const taken = pending.complete?.(text) ?? null;
  const settledRead = (settled: Settled | null) =>
    settled ? (post: string) => readRecipe(reader, post, settled) : null;
  if (taken)
    return {
      kind: 'turn',
      turn: {
        ...plain,
        command,
        ...taken,
        read: settledRead(pending.settled),
        settled: pending.settled,
        told,
        fromBase: command === 'scale',
      },
    };
  const one = pending.doubts.some(({ id }) => id === 'two-recipes') ? recipeChosen(pending.text, text) : null;
  if (one !== null)
    return { kind: 'turn', turn: { ...plain, command, text: one, options, told, mayTurn: true, fromBase: false } };
  const turn = { ...plain, command, text: pending.text, options, told, mayTurn: true, fromBase: command === 'scale' };
  const whole = settleOne(text, pending.doubts, context);
  if (whole) {
    const settled = both(pending.settled, whole);
    return { kind: 'turn', turn: { ...turn, read: settledRead(settled), settled } };
  }
  const put = pending.doubts.length > 0 ? mended(reader, pending.text, pending.settled, text) : null;
  if (put) return { kind: 'turn', turn: { ...turn, read: settledRead(put), settled: put } };
  const parts = partsOf(text);
  if (parts.length < 2 || parts.length > 4 || pending.doubts.length === 0) return null;
  let settled = pending.settled;
  const rest: string[] = [];
  for (const part of parts) {
    const one = settleOne(part, pending.doubts, context);
    if (one) settled = both(settled, one);
    else rest.push(part);
  }
  if (rest.length === parts.length || !settled) return null;
  if (rest.length === 0) return { kind: 'turn', turn: { ...turn, read: settledRead(settled), settled } };
  const reading = readRecipe(reader, pending.text, settled);
  const correction = reading.doubts.length === 0 ? readCorrection(reader, rest.join(', '), reading) : null;
  if (correction?.kind !== 'changes') return null;
  const better = amended(reading, correction.changes, correction.given, reader.lexicon);
  return {
    kind: 'turn',
    turn: { ...turn, options: without(options, correction.changes), read: () => better, settled },
  };
}
