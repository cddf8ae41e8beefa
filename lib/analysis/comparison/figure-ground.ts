import type { FigureMark, FigureSize, LeftOut, LeftOutReason } from '../shown-figure';
import { fewBatches } from '../shown-figure';
import type { JudgedBatch } from './judged-batch';

/** What the interval of a figure treats as independent. */
export type ClusterBy = 'treatment-run' | 'site';

/** The sums of one cluster: contaminated over inoculated units, fresh mass over what it is divided by. */
export type ClusterSum = { readonly numerator: number; readonly denominator: number };

/** Of so many batches that count, how many carry something that the reader must know. */
export type MarkedCounts = {
  readonly batches: number;
  readonly materials: number;
  readonly runMissing: number;
  readonly trimmed: number;
  readonly asPicked: number;
  readonly dryAssumed: number;
  readonly shared: number;
};

/** All that a figure rests on, from batches one by one or from kept sums: the figure does not know which. */
export type FigureGround = {
  /** Every batch asked about, counted or left out. */
  readonly asked: number;
  readonly size: FigureSize;
  readonly marked: MarkedCounts;
  readonly leftOut: readonly LeftOut[];
  readonly clusters: readonly ClusterSum[];
};

export function sortedLeftOut(leftOut: readonly LeftOut[]): LeftOut[] {
  return leftOut.toSorted((a, b) => a.reason.localeCompare(b.reason));
}

/** Adds up batches: those for which `sumOf` answers count, for the others `reasonOf` says why not. */
export function groundOf(
  batches: readonly JudgedBatch[],
  clusterBy: ClusterBy,
  sumOf: (batch: JudgedBatch) => ClusterSum | undefined,
  reasonOf: (batch: JudgedBatch) => LeftOutReason | undefined,
): FigureGround {
  const marked = { batches: 0, runMissing: 0, trimmed: 0, asPicked: 0, dryAssumed: 0, shared: 0 };
  const [runs, sites, materials] = [new Set<string>(), new Set<string>(), new Set<string | null>()];
  const sums = new Map<string, { numerator: number; denominator: number }>();
  const reasons = new Map<LeftOutReason, { batches: number; units: number }>();
  const bySite = clusterBy === 'site';
  let units = 0;
  // One pass: a page goes through the batches of its sites for five figures in each of two rows.
  for (const batch of batches) {
    const { facts, runCluster } = batch;
    const own = sumOf(batch);
    const reason = reasonOf(batch);
    if (reason !== undefined) {
      const count = reasons.get(reason) ?? { batches: 0, units: 0 };
      count.batches += 1;
      count.units += facts.unitCount;
      reasons.set(reason, count);
    }
    if (own === undefined) continue;
    units += facts.unitCount;
    (bySite ? runs : sites).add(bySite ? runCluster : facts.siteId);
    materials.add(facts.materialId);
    marked.batches += 1;
    if (facts.runMissing) marked.runMissing += 1;
    if (facts.anyTrimmed) marked.trimmed += 1;
    if (facts.anyAsPicked) marked.asPicked += 1;
    if (facts.dryAssumed) marked.dryAssumed += 1;
    if (facts.anyShared) marked.shared += 1;
    const label = bySite ? facts.siteId : runCluster;
    const sum = sums.get(label);
    if (sum === undefined) sums.set(label, { numerator: own.numerator, denominator: own.denominator });
    else {
      sum.numerator += own.numerator;
      sum.denominator += own.denominator;
    }
  }
  return {
    asked: batches.length,
    size: {
      ...{ batches: marked.batches, units },
      ...(bySite ? { runs: runs.size, sites: sums.size } : { runs: sums.size, sites: sites.size }),
    },
    marked: { ...marked, materials: materials.size },
    leftOut: sortedLeftOut([...reasons].map(([reason, count]) => ({ reason, ...count }))),
    clusters: sortedSums([...sums.values()]),
  };
}

/** In an order that does not depend on that of the records, so that sums are equal to the last digit. */
export function sortedSums(sums: readonly ClusterSum[]): ClusterSum[] {
  return sums.toSorted((a, b) => a.denominator - b.denominator || a.numerator - b.numerator);
}

/** What the reader must know about the batches of any figure. */
export function commonMarks(
  marked: Pick<MarkedCounts, 'batches' | 'materials' | 'runMissing'>,
  pooled: { species: boolean; materials: boolean },
): FigureMark[] {
  const marks: FigureMark[] = [];
  if (marked.batches < fewBatches) marks.push('few-batches');
  if (pooled.species) marks.push('species-pooled');
  if (pooled.materials && marked.materials > 1) marks.push('materials-pooled');
  if (marked.runMissing > 0) marks.push('run-not-recorded');
  return marks;
}
