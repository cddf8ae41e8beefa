import type { FigureMark, FigureSize, LeftOut, LeftOutReason } from '../shown-figure';
import { fewBatches } from '../shown-figure';
import type { JudgedBatch } from './judged-batch';

/** What the interval of a figure treats as independent. */
export type ClusterBy = 'treatment-run' | 'site';

export function clusterLabel(batch: JudgedBatch, by: ClusterBy): string {
  return by === 'site' ? batch.facts.siteId : batch.runCluster;
}

/** How much lies behind a figure. */
export function sizeOf(batches: readonly JudgedBatch[]): FigureSize {
  return {
    batches: batches.length,
    units: batches.reduce((sum, batch) => sum + batch.facts.unitCount, 0),
    runs: new Set(batches.map((batch) => batch.runCluster)).size,
    sites: new Set(batches.map((batch) => batch.facts.siteId)).size,
  };
}

/** Why batches were left out, with counts, in the order of the reasons' names. */
export function leftOutOf(
  batches: readonly JudgedBatch[],
  reasonOf: (batch: JudgedBatch) => LeftOutReason | undefined,
): LeftOut[] {
  const counts = new Map<LeftOutReason, { batches: number; units: number }>();
  for (const batch of batches) {
    const reason = reasonOf(batch);
    if (reason === undefined) continue;
    const count = counts.get(reason) ?? { batches: 0, units: 0 };
    counts.set(reason, { batches: count.batches + 1, units: count.units + batch.facts.unitCount });
  }
  return [...counts]
    .map(([reason, count]) => ({ reason, ...count }))
    .sort((a, b) => a.reason.localeCompare(b.reason));
}

/** What the reader must know about the batches of any figure. */
export function commonMarks(
  counted: readonly JudgedBatch[],
  pooled: { species: boolean; materials: boolean },
): FigureMark[] {
  const marks: FigureMark[] = [];
  if (counted.length < fewBatches) marks.push('few-batches');
  if (pooled.species) marks.push('species-pooled');
  if (pooled.materials && new Set(counted.map((batch) => batch.facts.materialId)).size > 1)
    marks.push('materials-pooled');
  if (counted.some((batch) => batch.facts.runMissing)) marks.push('run-not-recorded');
  return marks;
}
