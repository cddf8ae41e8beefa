import { grouped } from '../programme/grouped';
import type { ShownFigure } from '../shown-figure';
import { type ComparisonFilter, queryOfFilter, together } from './comparison-filter.input';
import { contaminationFigure, type FigureAsk } from './contamination-figure';
import type { JudgedBatch } from './judged-batch';
import { yieldFigure } from './yield-figure';

/** The figures of one row: a method, a site, a method at a site, or everything. */
export type ComparedRow = {
  /** Method id, `mixed` or `none`; undefined in a row of all methods. */
  readonly method: string | undefined;
  readonly site: string | undefined;
  readonly contamination: ShownFigure;
  readonly contaminationAtAnyTime: ShownFigure;
  /** Units lost for another cause, never counted as contamination. */
  readonly lostOtherUnits: number;
  readonly yield: ShownFigure;
  readonly yieldOfCropped: ShownFigure;
  /** Logs: biological efficiency over the whole life of those that are closed. Undefined for other containers. */
  readonly logLifeBe: ShownFigure | undefined;
  /** Grams weighed after the day to which the yield runs. */
  readonly laterGrams: number;
};

export type Comparison = {
  readonly total: ComparedRow;
  readonly methods: readonly ComparedRow[];
  readonly sites: readonly ComparedRow[];
  readonly cells: readonly ComparedRow[];
};

function chosenBy(batches: readonly JudgedBatch[], { method, site }: ComparisonFilter): JudgedBatch[] {
  return batches.filter(
    (batch) =>
      (method === undefined || batch.methodKey === method) &&
      (site === undefined || batch.facts.siteId === site),
  );
}

/**
 * The row of all batches that a filter chooses, `method` and `site` included: the very row that `compare` shows for
 * that place. One site clusters by treatment run, since batches of one run share its fate; several cluster by site.
 */
export function compareOne(
  batches: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): ComparedRow {
  const { method, site } = filter;
  const own = chosenBy(batches, filter);
  const ask = askOf(own, filter, asOf);
  const judged = own.flatMap(({ contamination }) =>
    contamination.kind === 'counted' ? [contamination] : [],
  );
  const yields = own.flatMap((batch) => (batch.yield.kind === 'counted' ? [batch.yield] : []));
  return {
    method,
    site,
    ...compareShown(own, filter, asOf),
    contaminationAtAnyTime: contaminationFigure(ask, 'any-time'),
    lostOtherUnits: judged.reduce((sum, counts) => sum + counts.lostClean, 0),
    yieldOfCropped: yieldFigure(ask, filter.container, 'cropped'),
    logLifeBe: filter.container === 'log' ? yieldFigure(ask, 'log', 'log-life') : undefined,
    laterGrams: yields.reduce((sum, counts) => sum + counts.laterGrams, 0),
  };
}

/** The two figures of `compareOne` that most pages show, of batches that the filter chooses. */
export function compareShown(
  chosen: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): Pick<ComparedRow, 'contamination' | 'yield'> {
  const ask = askOf(chosen, filter, asOf);
  return {
    contamination: contaminationFigure(ask, 'window'),
    yield: yieldFigure(ask, filter.container, 'all'),
  };
}

function askOf(batches: readonly JudgedBatch[], filter: ComparisonFilter, asOf: string): FigureAsk {
  return {
    batches,
    clusterBy: filter.site === undefined ? 'site' : 'treatment-run',
    pooled: { species: filter.species === together, materials: filter.material === together },
    asOf,
    rowsQuery: queryOfFilter(filter),
  };
}

const rowsByMethod = (batches: readonly JudgedBatch[], filter: ComparisonFilter, asOf: string) =>
  [...grouped(batches, (batch) => batch.methodKey)].map(([method, own]) =>
    compareOne(own, { ...filter, method }, asOf),
  );

const rowsBySite = (batches: readonly JudgedBatch[], filter: ComparisonFilter, asOf: string) =>
  [...grouped(batches, (batch) => batch.facts.siteId)].map(([site, own]) =>
    compareOne(own, { ...filter, site }, asOf),
  );

/** The rows by method of `compare`, without working out those of every site. */
export function compareMethods(
  batches: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): ComparedRow[] {
  return rowsByMethod(chosenBy(batches, filter), filter, asOf);
}

/** The rows by site of `compare`, without working out those of every method there. */
export function compareSites(
  batches: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): ComparedRow[] {
  return rowsBySite(chosenBy(batches, filter), filter, asOf);
}

/** The rows by site and of each method there of `compare`, without those over all sites. */
export function compareAtSites(
  batches: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): Pick<Comparison, 'sites' | 'cells'> {
  const chosen = chosenBy(batches, filter);
  return {
    sites: rowsBySite(chosen, filter, asOf),
    cells: [...grouped(chosen, (batch) => batch.methodKey)].flatMap(([method, some]) =>
      rowsBySite(some, { ...filter, method }, asOf),
    ),
  };
}

/**
 * Every method x site, with totals by method, by site and over all. A cell and a site's total cluster by treatment
 * run; a method's total and the grand total cluster by site.
 */
export function compare(batches: readonly JudgedBatch[], filter: ComparisonFilter, asOf: string): Comparison {
  const chosen = chosenBy(batches, filter);
  return {
    total: compareOne(chosen, filter, asOf),
    methods: rowsByMethod(chosen, filter, asOf),
    ...compareAtSites(chosen, filter, asOf),
  };
}
