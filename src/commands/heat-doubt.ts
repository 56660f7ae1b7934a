/** Of the reader's doubts those that a question about heat depends on, as the one question back. */
import type { Doubt, RecipeReading } from '../reading/reading.ts';
import type { Context, Refusal } from './define.ts';
import { mostPressing } from './questions.ts';

/** Doubts about an amount say what it is of; those without `of` concern every command. */
const always: ReadonlySet<Doubt['id']> = new Set(['disordered', 'two-recipes', 'corrected']);
const aboutAlkali: ReadonlySet<Doubt['id']> = new Set([
  'which-alkali',
  'alkali-volume',
  'alkali-percent',
  'stock-strength',
  'purity-odd',
]);
const aboutFats: ReadonlySet<Doubt['id']> = new Set([
  'unknown-fat',
  'unheld-fat',
  'ambiguous-name',
  'shares-sum',
  'shares-total',
]);
const aboutAmounts: ReadonlySet<Doubt['id']> = new Set([
  'zero',
  'negative',
  'range',
  'no-amount',
  'two-amounts',
  'units-disagree',
]);
/** No word of what it is of: only where some amount is needed at all. */
const unnamed: ReadonlySet<Doubt['id']> = new Set(['no-unit', 'decimal']);

type Topic = 'alkali' | 'water' | 'fats';

const alkaline = /hydroxide|lye|alkali|caustic|potash/i;
const watery = /water|ice/i;

function concerns(doubt: Doubt, topics: readonly Topic[]): boolean {
  const { id } = doubt;
  if (always.has(id) || unnamed.has(id)) return true;
  if (aboutAlkali.has(id)) return topics.includes('alkali');
  if (aboutFats.has(id)) return topics.includes('fats');
  if (!aboutAmounts.has(id) || !('of' in doubt)) return false;
  if (alkaline.test(doubt.of)) return topics.includes('alkali');
  if (watery.test(doubt.of)) return topics.includes('water');
  return topics.includes('fats');
}

export function heatDoubt(
  reading: RecipeReading,
  topics: readonly Topic[],
  context: Context,
): Refusal<'caustic'> | null {
  const doubts = reading.doubts.filter((doubt) => concerns(doubt, topics));
  return doubts.length > 0 ? mostPressing({ ...reading, doubts }, context) : null;
}
