import type { BatchCost, CostPart } from '@/lib/growing/batch-cost';
import { costParts } from '@/lib/growing/batch-cost';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { grouped } from '../programme/grouped';
import { fewestClusters, type ShownInterval, shownLevel } from '../shown-figure';

/** A closed batch with its cost, what it gave, and what its site was paid for a kilogram (minor units), if known. */
export type CostedBatch = {
  readonly id: string;
  readonly siteId: string;
  /** Method id, `mixed`, `second-life` or `none`. */
  readonly method: string;
  readonly run: string;
  readonly freshGrams: number;
  readonly cost: BatchCost;
  readonly soldMinorPerKg: number | null;
};

/** Minor units for a kilogram picked; no interval from fewer than three independent groups. */
export type PerKilogram =
  | {
      readonly kind: 'figure';
      readonly minorPerKg: number;
      readonly batches: number;
      readonly groups: number;
      readonly interval: ShownInterval;
    }
  | { readonly kind: 'cannot'; readonly reason: 'no-full-costs' | 'nothing-picked' | 'no-sales' };

export type CostGroup = {
  readonly key: string;
  readonly batches: number;
  readonly fullBatches: number;
  readonly freshGrams: number;
  readonly cost: PerKilogram;
  readonly margin: PerKilogram;
  readonly labourMinutesPerKg: number | null;
  readonly missing: readonly { readonly part: CostPart; readonly batches: number }[];
  /** What each site gave to the figures, so that a report can tell whom they would give away. */
  readonly bySite: readonly CostOfSite[];
};

/** Full costs of one site; `pricedGrams` is what of the grams has a price, so a margin, and `soldMinor` what it fetched. */
export type CostOfSite = {
  readonly siteId: string;
  readonly freshGrams: number;
  readonly minor: number;
  readonly pricedGrams: number;
  readonly soldMinor: number;
  readonly labourMinutes: number;
};

type Sums = { readonly numerator: number; readonly denominator: number; readonly cluster: string };

const gramsPerKg = 1000;

/** Costs and margins of some batches; `clusterBy` says what is independent of each other. */
export function costGroup(
  key: string,
  batches: readonly CostedBatch[],
  clusterBy: 'site' | 'run',
): CostGroup {
  const label = (batch: CostedBatch) => (clusterBy === 'site' ? batch.siteId : batch.run);
  const full = batches.flatMap((batch) =>
    batch.cost.kind === 'full' ? [{ ...batch, cluster: label(batch), cost: batch.cost }] : [],
  );
  const freshGrams = full.reduce((sum, batch) => sum + batch.freshGrams, 0);
  const minutes = full.reduce((sum, { cost }) => sum + cost.labourMinutes, 0);
  const cost = perKilogram(
    full.map((batch) => ({
      numerator: batch.cost.minor,
      denominator: batch.freshGrams,
      cluster: batch.cluster,
    })),
    clusterBy,
  );
  const priced = full.flatMap(({ soldMinorPerKg, freshGrams: grams, cost: { minor }, cluster }) =>
    soldMinorPerKg === null
      ? []
      : [{ numerator: (grams * soldMinorPerKg) / gramsPerKg - minor, denominator: grams, cluster }],
  );
  return {
    ...{ key, batches: batches.length, fullBatches: full.length, freshGrams, cost },
    margin:
      full.length > 0 && priced.length === 0
        ? { kind: 'cannot', reason: 'no-sales' }
        : perKilogram(priced, clusterBy),
    labourMinutesPerKg: freshGrams === 0 ? null : (minutes * gramsPerKg) / freshGrams,
    missing: missingParts(batches),
    bySite: [...grouped(full, ({ siteId }) => siteId)].map(([siteId, same]) => ({
      siteId,
      freshGrams: same.reduce((sum, batch) => sum + batch.freshGrams, 0),
      minor: same.reduce((sum, batch) => sum + batch.cost.minor, 0),
      pricedGrams: same.reduce(
        (sum, batch) => sum + (batch.soldMinorPerKg === null ? 0 : batch.freshGrams),
        0,
      ),
      soldMinor: same.reduce(
        (sum, batch) => sum + (batch.freshGrams * (batch.soldMinorPerKg ?? 0)) / gramsPerKg,
        0,
      ),
      labourMinutes: same.reduce((sum, batch) => sum + batch.cost.labourMinutes, 0),
    })),
  };
}

/** How many batches lack each part, the most often missing first. */
export function missingParts(batches: readonly CostedBatch[]): CostGroup['missing'] {
  return costParts
    .map((part) => ({
      part,
      batches: batches.filter(({ cost }) => cost.kind === 'missing' && cost.parts.includes(part)).length,
    }))
    .filter(({ batches: count }) => count > 0)
    .sort((a, b) => b.batches - a.batches);
}

function perKilogram(rows: readonly Sums[], clusterBy: 'site' | 'run'): PerKilogram {
  if (rows.length === 0) return { kind: 'cannot', reason: 'no-full-costs' };
  const sum = (of: 'numerator' | 'denominator') => rows.reduce((total, row) => total + row[of], 0);
  if (sum('denominator') === 0) return { kind: 'cannot', reason: 'nothing-picked' };
  const groups = byCluster(rows);
  const minorPerKg = (sum('numerator') * gramsPerKg) / sum('denominator');
  const about = { kind: 'figure' as const, minorPerKg, batches: rows.length, groups: groups.length };
  if (groups.length < fewestClusters) {
    const reason = clusterBy === 'site' ? 'too-few-sites' : 'too-few-runs';
    return { ...about, interval: { kind: 'none', reason } };
  }
  return { ...about, interval: limitsOf(groups) };
}

function byCluster(rows: readonly Sums[]): Sums[] {
  return [...grouped(rows, ({ cluster }) => cluster)].map(([cluster, same]) => ({
    cluster,
    numerator: same.reduce((total, row) => total + row.numerator, 0),
    denominator: same.reduce((total, row) => total + row.denominator, 0),
  }));
}

/**
 * Limits of a ratio whose numerator may be below nothing, as a margin is. Raising each numerator by the same amount for
 * a gram moves ratio and limits by that amount and leaves their width alone. A group that gave nothing and cost
 * something cannot be raised: then there are no limits.
 */
function limitsOf(groups: readonly Sums[]): ShownInterval {
  const raise = Math.max(
    0,
    ...groups.map(({ numerator, denominator }) => (denominator === 0 ? 0 : -numerator / denominator)),
  );
  const numerator = groups.map((group) => {
    const raised = group.numerator + raise * group.denominator;
    // The group that sets the raise ends at nothing, give or take the last bit.
    return group.denominator > 0 ? Math.max(0, raised) : raised;
  });
  if (numerator.some((value) => value < 0)) return { kind: 'none', reason: 'not-enough-data' };
  const answer = ratioOfSums({
    numerator,
    denominator: groups.map(({ denominator }) => denominator),
    cluster: groups.map(({ cluster }) => cluster),
    level: shownLevel,
  });
  if (answer.kind === 'cannot-compute' || answer.interval.kind === 'cannot-compute')
    return { kind: 'none', reason: 'not-enough-data' };
  const { low, high, level, method } = answer.interval;
  // Nothing costs less than nothing; a margin may.
  const least = raise > 0 ? Number.NEGATIVE_INFINITY : 0;
  const shown = (limit: number) => Math.max(least, (limit - raise) * gramsPerKg);
  return { kind: 'interval', low: shown(low), high: shown(high), level, method };
}
