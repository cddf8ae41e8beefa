import type { JudgedBatch } from '../comparison/judged-batch';
import type { JudgedRun } from './judged-run';
import { takesPart } from './takes-part';

/** The runs that treated the batches asked about, each once, in the order given. */
export function runsBehind(
  batches: readonly JudgedBatch[],
  runs: readonly JudgedRun[],
): readonly JudgedRun[] {
  const treating = new Set(batches.filter(takesPart).flatMap(({ facts }) => facts.runIds));
  return runs.filter(({ id }) => treating.has(id));
}
