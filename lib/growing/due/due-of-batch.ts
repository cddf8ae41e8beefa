import type { BatchDue, BatchFacts } from './batch-facts';
import { expectColonised } from './expect-colonised';
import { expectFirstHarvest } from './expect-first-harvest';
import { expectPins } from './expect-pins';
import { firstLook } from './first-look';
import { goneQuiet } from './gone-quiet';
import { nextFlush } from './next-flush';
import { noneLeft } from './none-left';
import { windowLook } from './window-look';

/** The furthest step whose time has come; before any has, the nearest one to come. */
function growthStep(batch: BatchFacts): BatchDue | null {
  if (batch.pickedOn !== null) return nextFlush(batch);
  const steps = [expectFirstHarvest(batch), expectPins(batch), expectColonised(batch)].filter(
    (step) => step !== null,
  );
  return steps.find(({ from }) => from <= batch.today) ?? steps.at(-1) ?? null;
}

/** The last that is awaited of a batch: its first picking, or the next one. */
function lastAwaited(batch: BatchFacts): BatchDue | null {
  return batch.pickedOn === null ? expectFirstHarvest(batch) : nextFlush(batch);
}

/**
 * What there is to do with an open batch, at most one look for contamination and one step of its growth, whether its
 * day has come or not.
 */
export function dueOfBatch(batch: BatchFacts): readonly BatchDue[] {
  const empty = noneLeft(batch);
  if (empty !== null) return [empty];
  const judged = batch.judgedOn !== null && batch.judgedOn <= batch.today;
  const look = (judged ? null : firstLook(batch)) ?? windowLook(batch);
  const quiet = goneQuiet(batch, lastAwaited(batch));
  // A look long after everything was over would say nothing of when the contamination came.
  if (quiet !== null) return [quiet];
  return [look, growthStep(batch)].filter((line) => line !== null);
}
