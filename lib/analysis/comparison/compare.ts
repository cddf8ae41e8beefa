import type { ShownFigure } from '../shown-figure';
import { type ComparisonFilter, queryOfFilter, together } from './comparison-filter.input';
import { contaminationFigure, type FigureAsk } from './contamination-figure';
import type { ClusterBy } from './figure-ground';
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
  /** Grams weighed after the day to which the yield runs. */
  readonly laterGrams: number;
};

export type Comparison = {
  readonly total: ComparedRow;
  readonly methods: readonly ComparedRow[];
  readonly sites: readonly ComparedRow[];
  readonly cells: readonly ComparedRow[];
};

function rowOf(
  batches: readonly JudgedBatch[],
  filter: ComparisonFilter,
  place: { method: string | undefined; site: string | undefined },
  clusterBy: ClusterBy,
  asOf: string,
): ComparedRow {
  const ask: FigureAsk = {
    batches,
    clusterBy,
    pooled: { species: filter.species === together, materials: filter.material === together },
    asOf,
    rowsQuery: queryOfFilter({ ...filter, ...place }),
  };
  const judged = batches.flatMap(({ contamination }) =>
    contamination.kind === 'counted' ? [contamination] : [],
  );
  const yields = batches.flatMap((batch) => (batch.yield.kind === 'counted' ? [batch.yield] : []));
  return {
    ...place,
    contamination: contaminationFigure(ask, 'window'),
    contaminationAtAnyTime: contaminationFigure(ask, 'any-time'),
    lostOtherUnits: judged.reduce((sum, counts) => sum + counts.lostClean, 0),
    yield: yieldFigure(ask, filter.container, 'all'),
    yieldOfCropped: yieldFigure(ask, filter.container, 'cropped'),
    laterGrams: yields.reduce((sum, counts) => sum + counts.laterGrams, 0),
  };
}

function grouped<K>(
  batches: readonly JudgedBatch[],
  keyOf: (batch: JudgedBatch) => K,
): Map<K, JudgedBatch[]> {
  const groups = new Map<K, JudgedBatch[]>();
  for (const batch of batches) {
    const key = keyOf(batch);
    const group = groups.get(key);
    if (group) group.push(batch);
    else groups.set(key, [batch]);
  }
  return groups;
}

/**
 * Every method x site, with totals by method, by site and over all. A cell and a site's total cluster by treatment
 * run, since batches of one run share its fate; a method's total and the grand total cluster by site.
 */
export function compare(batches: readonly JudgedBatch[], filter: ComparisonFilter, asOf: string): Comparison {
  const { method, site } = filter;
  const chosen = batches.filter(
    (batch) =>
      (method === undefined || batch.methodKey === method) &&
      (site === undefined || batch.facts.siteId === site),
  );
  const byMethod = grouped(chosen, (batch) => batch.methodKey);
  const bySite = grouped(chosen, (batch) => batch.facts.siteId);
  const cells = [...byMethod].flatMap(([methodKey, own]) =>
    [...grouped(own, (batch) => batch.facts.siteId)].map(([siteId, some]) =>
      rowOf(some, filter, { method: methodKey, site: siteId }, 'treatment-run', asOf),
    ),
  );
  return {
    total: rowOf(chosen, filter, { method, site }, site === undefined ? 'site' : 'treatment-run', asOf),
    methods: [...byMethod].map(([key, some]) =>
      rowOf(some, filter, { method: key, site }, site === undefined ? 'site' : 'treatment-run', asOf),
    ),
    sites: [...bySite].map(([key, some]) =>
      rowOf(some, filter, { method, site: key }, 'treatment-run', asOf),
    ),
    cells,
  };
}
