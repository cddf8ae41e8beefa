import { intraclassCorrelation } from '@/lib/stats/clustered/intraclass-correlation';
import type { JudgedBatch } from '../comparison/judged-batch';

function bySite(batches: readonly JudgedBatch[]): JudgedBatch[][] {
  const sites = new Map<string, JudgedBatch[]>();
  for (const batch of batches) {
    const own = sites.get(batch.facts.siteId);
    if (own) own.push(batch);
    else sites.set(batch.facts.siteId, [batch]);
  }
  return [...sites.values()];
}

/** Mean of values with their weights; null without any. */
function weighted(pairs: readonly { readonly value: number; readonly weight: number }[]): number | null {
  const weight = pairs.reduce((sum, pair) => sum + pair.weight, 0);
  return weight === 0 ? null : pairs.reduce((sum, pair) => sum + pair.weight * pair.value, 0) / weight;
}

/**
 * Percent lost, how alike units of one run are at one site (the analysis-of-variance correlation within each site, averaged
 * over `likenessSites` by their batches, at least 0), biological efficiency, and its standard deviation between batches of
 * one site. A site with a single run, or where no unit or every unit was lost, tells nothing of likeness. Methods are not
 * told apart, so that the variation is rather too large than too small. Null where the records do not say.
 */
export function usualRuns(batches: readonly JudgedBatch[]) {
  const counted = batches.flatMap(({ facts, contamination, runCluster }) =>
    contamination.kind === 'counted'
      ? [{ siteId: facts.siteId, runCluster, found: contamination.byWindowEnd, units: contamination.units }]
      : [],
  );
  const units = counted.reduce((sum, batch) => sum + batch.units, 0);
  const found = counted.reduce((sum, batch) => sum + batch.found, 0);
  const likenesses = bySite(batches.filter(({ contamination }) => contamination.kind === 'counted')).flatMap(
    (own) => {
      const rows = own.flatMap(({ contamination, runCluster }) =>
        contamination.kind === 'counted' ? [{ runCluster, ...contamination }] : [],
      );
      const value = intraclassCorrelation({
        events: rows.map(({ byWindowEnd }) => byWindowEnd),
        trials: rows.map((row) => row.units),
        cluster: rows.map(({ runCluster }) => runCluster),
      });
      return typeof value === 'number' ? [{ value, weight: rows.length }] : [];
    },
  );
  const likeness = weighted(likenesses);
  const cropped = batches.flatMap(({ facts, yield: given }) =>
    given.kind === 'counted'
      ? [{ siteId: facts.siteId, percent: (100 * given.freshGrams) / given.over }]
      : [],
  );
  const siteIds = [...new Set(cropped.map(({ siteId }) => siteId))];
  const variance = weighted(
    siteIds.flatMap((siteId) => {
      const own = cropped.filter((batch) => batch.siteId === siteId).map(({ percent }) => percent);
      if (own.length < 2) return [];
      const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
      const squares = own.reduce((sum, value) => sum + (value - mean) ** 2, 0);
      return [{ value: squares / (own.length - 1), weight: own.length - 1 }];
    }),
  );
  return {
    lostPercent: units === 0 ? null : (100 * found) / units,
    likeness: likeness === null ? null : Math.max(0, likeness),
    likenessSites: likenesses.length,
    bePercent: weighted(cropped.map(({ percent }) => ({ value: percent, weight: 1 }))),
    runSpreadPoints: variance === null ? null : Math.sqrt(variance),
  };
}
