import { daysBetween } from '@/lib/growing/calendar-date';
import type { SiteDates } from '../comparison/batch-facts';
import type { ComparedRow } from '../comparison/compare';
import { type ComparisonFilter, queryOfFilter, together } from '../comparison/comparison-filter.input';
import { type FigureAbout, rateFigure } from '../comparison/contamination-figure';
import { type FigureGround, sortedLeftOut, sortedSums } from '../comparison/figure-ground';
import { ratioFigure } from '../comparison/yield-figure';
import type { LeftOut, LeftOutReason } from '../shown-figure';
import type { ApartClusters } from './apart-clusters';
import type { CountedSum, Measure, OutcomeSums } from './outcome-sums';

type Whole = { readonly sums: OutcomeSums; readonly apart: ApartClusters; readonly today: SiteDates };

/** Log-days of open logs grow by the day; the sums hold them as units and units x day of inoculation. */
function denominatorOf(sum: CountedSum, today: SiteDates): number {
  const [siteId, , , , , , denominator, , , openUnits, openUnitDays] = sum;
  if (openUnits === 0) return denominator;
  const dayNumber = daysBetween('1970-01-01', today.get(siteId) ?? '1970-01-01');
  return denominator + openUnits * dayNumber - openUnitDays;
}

/**
 * The row of every batch that a filter chooses, or of one method, out of sums: the very figures that `compareOne` adds up
 * batch by batch. Its figures cluster by site, and a site's sums are its cluster.
 */
export function rowOfSums(
  { sums, apart, today }: Whole,
  filter: ComparisonFilter,
  asOf: string,
): ComparedRow {
  const { method, container } = filter;
  const within = (key: string) => method === undefined || key === method;
  const of = (measure: Measure) => sums.counted.filter(([, key, own]) => within(key) && own === measure);
  const leftOutOf = (measure: Measure): LeftOut[] => {
    const counts = new Map<LeftOutReason, LeftOut>();
    for (const [key, own, reason, batches, units] of sums.leftOut) {
      if (own !== measure || !within(key)) continue;
      const before = counts.get(reason) ?? { reason, batches: 0, units: 0 };
      counts.set(reason, { reason, batches: before.batches + batches, units: before.units + units });
    }
    return [...counts.values()];
  };
  const groundOf = (
    measure: Measure,
    numeratorOf: (sum: CountedSum) => number,
    alsoLeftOut: readonly LeftOut[] = [],
  ): FigureGround => {
    const rows = of(measure);
    const bySite = new Map<string, { numerator: number; denominator: number }>();
    for (const row of rows) {
      const { numerator, denominator } = bySite.get(row[0]) ?? { numerator: 0, denominator: 0 };
      bySite.set(row[0], {
        numerator: numerator + numeratorOf(row),
        denominator: denominator + denominatorOf(row, today),
      });
    }
    const marked = sums.marked.filter(([key, own]) => within(key) && own === measure);
    const count = (at: 2 | 3 | 4 | 5 | 6 | 7) => marked.reduce((total, row) => total + row[at], 0);
    const batches = rows.reduce((total, row) => total + row[3], 0);
    const leftOut = sortedLeftOut([...leftOutOf(measure === 'cropped' ? 'yield' : measure), ...alsoLeftOut]);
    const materials = new Set(marked.flatMap((row) => row[8].map((key) => (key === 'mixed' ? 'none' : key))));
    return {
      asked: batches + leftOut.reduce((total, one) => total + one.batches, 0),
      size: {
        batches,
        units: rows.reduce((total, row) => total + row[4], 0),
        runs: count(2) + apart(measure, method),
        sites: bySite.size,
      },
      marked: {
        ...{
          batches,
          materials: materials.size,
          runMissing: count(3),
          trimmed: count(4),
          asPicked: count(5),
        },
        ...{ dryAssumed: count(6), shared: count(7) },
      },
      leftOut,
      clusters: sortedSums([...bySite.values()]),
    };
  };
  const about: FigureAbout = {
    clusterBy: 'site',
    pooled: { species: filter.species === together, materials: filter.material === together },
    asOf,
    rowsQuery: queryOfFilter(filter),
  };
  const inTime = ([, , , , , numerator]: CountedSum) => numerator;
  const ever = (sum: CountedSum) => sum[5] + sum[7];
  const total = (measure: Measure, at: 3 | 4 | 7 | 8) => of(measure).reduce((sum, row) => sum + row[at], 0);
  const noCrop = total('yield', 3) - total('cropped', 3);
  const didNotCrop: LeftOut[] =
    noCrop === 0
      ? []
      : [{ reason: 'did-not-crop', batches: noCrop, units: total('yield', 4) - total('cropped', 4) }];
  const beds = container === 'bed';
  return {
    method,
    site: undefined,
    contamination: rateFigure(groundOf('contamination', inTime), about, beds),
    contaminationAtAnyTime: rateFigure(groundOf('contamination', ever), about, beds),
    lostOtherUnits: total('contamination', 8),
    yield: ratioFigure(groundOf('yield', inTime), about, container, 'all'),
    yieldOfCropped: ratioFigure(groundOf('cropped', inTime, didNotCrop), about, container, 'cropped'),
    logLifeBe:
      container === 'log' ? ratioFigure(groundOf('life', inTime), about, 'log', 'log-life') : undefined,
    laterGrams: total('yield', 7),
  };
}
