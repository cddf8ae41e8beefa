import { daysBetween } from '@/lib/growing/calendar-date';
import type { SiteDates } from '../comparison/batch-facts';
import { type FigureGround, sortedLeftOut, sortedSums } from '../comparison/figure-ground';
import type { LeftOut, LeftOutReason } from '../shown-figure';
import type { ApartClusters } from './apart-clusters';
import type { AmountSum, CountedSum, LeftOutSum, MarkedSum, Measure } from './outcome-sums';

/** The sums of one method, or of all, with what is needed to make figures of them. */
export type SumsOfRow = {
  readonly counted: readonly CountedSum[];
  readonly amounts: readonly AmountSum[];
  readonly marked: readonly MarkedSum[];
  readonly leftOut: readonly LeftOutSum[];
  readonly apart: ApartClusters;
  readonly today: SiteDates;
};

type Cluster = { numerator: number; denominator: number };

/** Log-days of open logs grow by the day; the sums hold them as units and units x day of inoculation. */
function openLogDays([siteId, , , , , , openUnits, openUnitDays]: CountedSum, today: SiteDates): number {
  return openUnits * daysBetween('1970-01-01', today.get(siteId) ?? '1970-01-01') - openUnitDays;
}

/** What a measure's figure rests on, out of the sums of one method or of all. */
export function groundOfSums(
  { counted, amounts, marked, leftOut, apart, today }: SumsOfRow,
  method: string | undefined,
  measure: Measure,
  numeratorOf: (sum: CountedSum) => number,
  alsoLeftOut: readonly LeftOut[],
): FigureGround {
  const bySite = new Map<string, Cluster>();
  for (const row of counted) {
    // By place: each row of a thousand sites is gone through a dozen times, and taking it apart is most of that.
    if (row[2] !== measure) continue;
    const denominator = row[4] + (row[6] === 0 ? 0 : openLogDays(row, today));
    const cluster = bySite.get(row[0]);
    if (cluster === undefined) bySite.set(row[0], { numerator: numeratorOf(row), denominator });
    else {
      cluster.numerator += numeratorOf(row);
      cluster.denominator += denominator;
    }
  }
  const said = marked.filter(([, own]) => own === measure);
  const count = (at: 2 | 3 | 4 | 5 | 6 | 7) => said.reduce((total, row) => total + row[at], 0);
  const amount = (at: 2 | 3) =>
    amounts.reduce((total, row) => (row[1] === measure ? total + row[at] : total), 0);
  const why = measure === 'cropped' ? 'yield' : measure;
  const reasons = new Map<LeftOutReason, LeftOut>();
  for (const [, own, reason, batches, units] of leftOut) {
    if (own !== why) continue;
    const before = reasons.get(reason) ?? { reason, batches: 0, units: 0 };
    reasons.set(reason, { reason, batches: before.batches + batches, units: before.units + units });
  }
  const batches = amount(2);
  const allLeftOut = sortedLeftOut([...reasons.values(), ...alsoLeftOut]);
  const materials = new Set(said.flatMap((row) => row[8].map((key) => (key === 'mixed' ? 'none' : key))));
  return {
    asked: batches + allLeftOut.reduce((total, one) => total + one.batches, 0),
    size: { batches, units: amount(3), runs: count(2) + apart(measure, method), sites: bySite.size },
    marked: {
      ...{ batches, materials: materials.size, runMissing: count(3), trimmed: count(4), asPicked: count(5) },
      ...{ dryAssumed: count(6), shared: count(7) },
    },
    leftOut: allLeftOut,
    clusters: sortedSums([...bySite.values()]),
  };
}
