import type { Result } from '../../answer/types.ts';
import type { Batch } from '../../engine/batch/batch.ts';
import { wayToAid } from '../cautions.ts';
import type { Memory, Refusal, Said } from '../define.ts';
import { dateWords } from '../when.ts';
import { batchIn, type Held } from './keep.ts';
import { batchResult } from './result.ts';
import { guideOf, stageName } from './stages.ts';
import type { Around } from './step.ts';

/** Ended batches that one answer names. */
const shown = 10;

export async function listed(
  open: readonly Held[],
  { own }: Memory,
  { memory, clock, context, style }: Around,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  // lots are in the order of their days: the last ones stand at the end
  const ended: { readonly batch: Batch; readonly key: string }[] = [];
  for (let after = ''; ; ) {
    const page = await own.list('batch', { ...(after === '' ? {} : { after }), limit: 200 });
    for (const document of page) {
      const batch = batchIn(document);
      if (batch?.end) ended.push({ batch, key: document.key });
    }
    const last = page.at(-1);
    if (!last || page.length < 200) break;
    after = last.key;
  }
  const day = (at: number): string => dateWords(at, memory.now, clock.zone);
  const past = ended.slice(-shown).reverse();
  return {
    ok: true,
    value: {
      title: 'Your batches',
      lead:
        open.length === 0
          ? 'No batch is open.'
          : `${open.length === 1 ? 'One batch is' : `${open.length} batches are`} open.`,
      body: [
        ...(open.length > 0
          ? [
              {
                kind: 'list',
                title: 'Open',
                items: open.map(
                  ({ batch }) =>
                    `${batch.lot}${batch.name === '' ? '' : `, ${batch.name}`}: ${stageName[batch.stage]}, last spoken of on ${day(batch.touchedAt)}`,
                ),
              } as const,
            ]
          : []),
        ...(past.length > 0
          ? [
              {
                kind: 'list',
                title: 'Closed',
                items: past.map(
                  ({ batch, key }) => `${key}${batch.name === '' ? '' : `, ${batch.name}`}: ${day(batch.end?.at ?? 0)}`,
                ),
              } as const,
            ]
          : []),
      ],
      details: [],
      assumptions: [],
      warnings: [],
      caution: [wayToAid],
      actions: open.slice(0, 3).map(({ key }) => ({ label: key, request: `batch ${key}` })),
      result: {
        batches: [...open.map(({ batch }) => batch), ...past.map(({ batch }) => batch)].map((batch) =>
          batchResult(batch, memory.now, guideOf(batch, memory.now, context, style)),
        ),
      },
    },
  };
}
