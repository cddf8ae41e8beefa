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

function clusterLabel(batch: JudgedBatch, by: ClusterBy): string {
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
  return sortedLeftOut([...counts].map(([reason, count]) => ({ reason, ...count })));
}

export function sortedLeftOut(leftOut: readonly LeftOut[]): LeftOut[] {
  return leftOut.toSorted((a, b) => a.reason.localeCompare(b.reason));
}

function markedCounts(counted: readonly JudgedBatch[]): MarkedCounts {
  const count = (has: (batch: JudgedBatch) => boolean) => counted.filter(has).length;
  return {
    batches: counted.length,
    materials: new Set(counted.map(({ facts }) => facts.materialId)).size,
    runMissing: count(({ facts }) => facts.runMissing),
    trimmed: count(({ facts }) => facts.anyTrimmed),
    asPicked: count(({ facts }) => facts.anyAsPicked),
    dryAssumed: count(({ facts }) => facts.dryAssumed),
    shared: count(({ facts }) => facts.anyShared),
  };
}

/** Adds up batches: those for which `sumOf` answers count, for the others `reasonOf` says why not. */
export function groundOf(
  batches: readonly JudgedBatch[],
  clusterBy: ClusterBy,
  sumOf: (batch: JudgedBatch) => ClusterSum | undefined,
  reasonOf: (batch: JudgedBatch) => LeftOutReason | undefined,
): FigureGround {
  const counted: JudgedBatch[] = [];
  const sums = new Map<string, ClusterSum>();
  for (const batch of batches) {
    const own = sumOf(batch);
    if (own === undefined) continue;
    counted.push(batch);
    const label = clusterLabel(batch, clusterBy);
    const { numerator, denominator } = sums.get(label) ?? { numerator: 0, denominator: 0 };
    sums.set(label, {
      numerator: numerator + own.numerator,
      denominator: denominator + own.denominator,
    });
  }
  return {
    asked: batches.length,
    size: sizeOf(counted),
    marked: markedCounts(counted),
    leftOut: leftOutOf(batches, reasonOf),
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
