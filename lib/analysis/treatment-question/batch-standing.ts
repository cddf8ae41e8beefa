import type { RunStanding } from '@/lib/growing/window-margin';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { JudgedRun } from './judged-run';
import { takesPart } from './takes-part';

/** A batch with the standing of its run; of several runs the one that decides. */
export type TreatedBatch = { readonly batch: JudgedBatch; readonly run: JudgedRun };

/**
 * One short part spoils a batch; one that nobody measured leaves it in doubt; one that lasted longer than its window allows keeps
 * the batch from counting as one inside it; else the one that held least decides.
 */
const weight: Readonly<Record<RunStanding, number>> = { outside: 0, unknown: 1, long: 2, just: 3, well: 4 };

/** The batches whose run was held against a window, in the order given. */
export function treatedBatches(
  batches: readonly JudgedBatch[],
  runs: readonly JudgedRun[],
): readonly TreatedBatch[] {
  const byId = new Map(runs.map((run) => [run.id, run]));
  return batches.flatMap((batch) => {
    if (!takesPart(batch)) return [];
    const own = batch.facts.runIds.flatMap((id) => byId.get(id) ?? []);
    const [first] = own.sort(
      (a, b) =>
        weight[a.standing] - weight[b.standing] ||
        (a.heldShare ?? 0) - (b.heldShare ?? 0) ||
        (a.id < b.id ? -1 : 1),
    );
    return first ? [{ batch, run: first }] : [];
  });
}
