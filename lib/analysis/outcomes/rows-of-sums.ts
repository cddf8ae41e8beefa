import type { SiteDates } from '../comparison/batch-facts';
import type { ComparedRow } from '../comparison/compare';
import { type ComparisonFilter, queryOfFilter, together } from '../comparison/comparison-filter.input';
import { type FigureAbout, rateFigure } from '../comparison/contamination-figure';
import { ratioFigure } from '../comparison/yield-figure';
import type { LeftOut } from '../shown-figure';
import type { ApartClusters } from './apart-clusters';
import { groundOfSums, type SumsOfRow } from './ground-of-sums';
import type { AmountSum, CountedSum, LeftOutSum, MarkedSum, OutcomeSums } from './outcome-sums';

/**
 * The row of every batch that the sums hold, or of one method among them: the very figures that `compareOne` adds up
 * batch by batch. Its figures cluster by site, and a site's sums are its cluster.
 */
export function rowOfSums(
  own: SumsOfRow,
  filter: ComparisonFilter,
  method: string | undefined,
  asOf: string,
): ComparedRow {
  const { container } = filter;
  const about: FigureAbout = {
    clusterBy: 'site',
    pooled: { species: filter.species === together, materials: filter.material === together },
    asOf,
    rowsQuery: queryOfFilter({ ...filter, method }),
  };
  const inTime = (row: CountedSum) => row[3];
  const ever = (row: CountedSum) => row[3] + row[5];
  const total = (measure: AmountSum[1], at: 2 | 3 | 4 | 5) =>
    own.amounts.reduce((sum, row) => (row[1] === measure ? sum + row[at] : sum), 0);
  const noCrop = total('yield', 2) - total('cropped', 2);
  const didNotCrop: LeftOut[] =
    noCrop === 0
      ? []
      : [{ reason: 'did-not-crop', batches: noCrop, units: total('yield', 3) - total('cropped', 3) }];
  const ground = (measure: AmountSum[1], numeratorOf: typeof inTime, alsoLeftOut: readonly LeftOut[] = []) =>
    groundOfSums(own, method, measure, numeratorOf, alsoLeftOut);
  const beds = container === 'bed';
  return {
    method,
    site: undefined,
    contamination: rateFigure(ground('contamination', inTime), about, beds),
    contaminationAtAnyTime: rateFigure(ground('contamination', ever), about, beds),
    lostOtherUnits: total('contamination', 5),
    yield: ratioFigure(ground('yield', inTime), about, container, 'all'),
    yieldOfCropped: ratioFigure(ground('cropped', inTime, didNotCrop), about, container, 'cropped'),
    logLifeBe:
      container === 'log' ? ratioFigure(ground('life', inTime), about, 'log', 'log-life') : undefined,
    laterGrams: total('yield', 4),
  };
}

type Whole = { readonly sums: OutcomeSums; readonly apart: ApartClusters; readonly today: SiteDates };

/** The rows of each method that the sums hold. */
export function rowsOfMethods(
  { sums, ...rest }: Whole,
  filter: ComparisonFilter,
  asOf: string,
): readonly ComparedRow[] {
  const byMethod = new Map<
    string,
    { counted: CountedSum[]; amounts: AmountSum[]; marked: MarkedSum[]; leftOut: LeftOutSum[] }
  >();
  const of = (method: string) => {
    const own = byMethod.get(method) ?? { counted: [], amounts: [], marked: [], leftOut: [] };
    byMethod.set(method, own);
    return own;
  };
  for (const row of sums.counted) of(row[1]).counted.push(row);
  for (const row of sums.leftOut) of(row[0]).leftOut.push(row);
  for (const row of sums.amounts) byMethod.get(row[0])?.amounts.push(row);
  for (const row of sums.marked) byMethod.get(row[0])?.marked.push(row);
  return [...byMethod].map(([method, own]) => rowOfSums({ ...own, ...rest }, filter, method, asOf));
}
