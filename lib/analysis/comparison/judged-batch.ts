import type { BatchFacts, SiteDates } from './batch-facts';
import { type ContaminationClass, classifyContamination } from './classify-contamination';
import { classifyFinishedLogs, classifyYield, type YieldClass } from './classify-yield';
import { clusterOfRun } from './cluster-of-run';
import { mixed, notRecorded, secondLife } from './comparison-filter.input';

/** A batch with what it counts for today, and the groups it belongs to. */
export type JudgedBatch = {
  readonly facts: BatchFacts;
  readonly contamination: ContaminationClass;
  readonly yield: YieldClass;
  /** For biological efficiency over a finished log's whole life; undefined for every other container. */
  readonly logLife: YieldClass | undefined;
  /** Method id, `mixed`, `second-life` or `none`. */
  readonly methodKey: string;
  /** Cluster by treatment run: see `cluster-of-run.ts`. */
  readonly runCluster: string;
};

export function methodKeyOf(facts: BatchFacts): string {
  if (facts.secondLife) return secondLife;
  return facts.mixedMethod ? mixed : (facts.methodId ?? notRecorded);
}

/**
 * Judges each batch by the calendar of its own site; nothing needs to be written when a day passes. `clusters` is given
 * where batches outside of these join some of them.
 */
export function judgeBatches(
  batches: readonly BatchFacts[],
  today: SiteDates,
  clusters: ReadonlyMap<string, string> = clusterOfRun(batches),
): JudgedBatch[] {
  return batches.flatMap((facts) => {
    const siteToday = today.get(facts.siteId);
    if (siteToday === undefined) return [];
    return [
      {
        facts,
        contamination: classifyContamination(facts, siteToday),
        yield: classifyYield(facts, siteToday),
        logLife: facts.containerKind === 'log' ? classifyFinishedLogs(facts) : undefined,
        methodKey: methodKeyOf(facts),
        runCluster: clusters.get(facts.id) ?? `batch:${facts.id}`,
      },
    ];
  });
}
