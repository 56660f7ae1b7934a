/** Whether a text without a command's word is said of a batch that is open in its place, or may be. */
import type { Fault } from '../../answer/types.ts';
import type { Held } from '../../commands/batch/keep.ts';
import { type Stage, stageAfter } from '../../engine/batch/batch.ts';
import { type ReadStep, readStep } from '../../reading/batch-step.ts';
import type { Session } from './store.ts';

/** Who stands at a pot says something of it more often than this, ms. */
const freshFor = 6 * 3_600_000;

/** At these something warm is measured. */
const warm: ReadonlySet<Stage> = new Set(['lye', 'mix', 'separation', 'applesauce', 'gel', 'test', 'cool', 'scent']);
const weighing: ReadonlySet<Stage> = new Set(['weigh', 'lye', 'mix']);

const kinds = /^(?:lye|alkali|caustic|naoh|koh|(?:sodium |potassium )?hydroxide|water|ice|oils?|fats?)$/;

/** Every word stands in the name of one thing that is to be weighed; or there is none. */
function isAmong(said: string, lines: Held['batch']['lines']): boolean {
  const words = said.toLowerCase().match(/\p{L}+/gu) ?? [];
  return (
    kinds.test(words.join(' ')) || lines.some(({ name }) => words.every((word) => name.toLowerCase().includes(word)))
  );
}

/**
 * Null for a text that no batch can be meant by; cheap, so that every text can be asked. `commanded`: it begins with the
 * word of a command, as "lye is clear" does.
 */
export function saidAtPot(text: string, commanded: boolean): ReadStep | null {
  const read = readStep(text);
  if (!read || read.means === 'word' || (commanded && read.step.do !== 'stage')) return null;
  return read;
}

/** What was last heard or told of it. */
const lastAt = ({ batch }: Held, now: number): number =>
  batch.timer && batch.timer.dueAt <= now ? Math.max(batch.timer.dueAt, batch.touchedAt) : batch.touchedAt;

/** `batch`: it is one of these; null: it is about something else; or the question which. */
export function meansBatch(
  { step, means }: ReadStep,
  open: readonly Held[],
  session: Session,
  text: string,
  now: number,
): 'batch' | Fault | null {
  const [newest] = open;
  if (!newest) return null;
  const fresh = open.filter((held) => now - lastAt(held, now) < freshFor);
  const since = lastAt(newest, now);
  const { recipe, figure } = session;
  // the last question about a pot that cools goes on
  if (step.do === 'read' && session.newest === 'figure' && figure?.command === 'cool' && figure.at > since) return null;
  if ((step.do === 'undo' || step.do === 'take') && recipe && recipe.at > since && means === 'pot') return null;
  // "cut" said of what stands and sets, days after it was filled in
  const isNext =
    step.do === 'stage' &&
    open.some(({ batch }) => stageAfter(batch) === step.stage || (batch.stage === 'cure' && step.stage === 'done'));
  if (means === 'batch' || isNext) return 'batch';
  const fits = fresh.filter(({ batch: { stage, lines } }) => {
    if (step.do === 'take') return weighing.has(stage) && isAmong(step.said, lines);
    // a figure alone is what the scale shows, or the thermometer
    return step.do === 'read'
      ? warm.has(stage) || (stage === 'weigh' && step.unit === null && step.clock === null)
      : true;
  });
  if (fits.length > 0) return 'batch';
  if (step.do === 'take' || step.do === 'read') return null;
  const { lot } = newest.batch;
  return {
    code: 'unclear',
    message: `Do you mean batch ${lot}?`,
    hint: 'I heard nothing of it for some hours, so say it with the word "batch".',
    candidates: [`batch ${lot} ${text.trim()}`],
    caution: [],
  };
}
