import { clusterCounts } from '../../../lib/stats/clustered/cluster-counts';
import { linearisedProportion } from '../../../lib/stats/clustered/linearised-proportion';
import { raoScottInterval } from '../../../lib/stats/clustered/rao-scott-interval';
import { wilsonInterval } from '../../../lib/stats/proportion/wilson-interval';
import { handler as ratios } from '../handlers/05-ratio-estimator';
import { limitsOrNull, orNull } from '../or-null';
import type { ReferenceContext } from '../reference-handler';
import type { NetworkBatch } from './network-data';

/** A method's contamination over all its closed batches, without a model: clustered by site, and by batch. */
export function crudeContamination(batches: readonly NetworkBatch[]) {
  const rows = (cluster: (batch: NetworkBatch) => string) => ({
    events: batches.map(({ contaminated }) => contaminated),
    trials: batches.map(({ units }) => units),
    cluster: batches.map(cluster),
  });
  const bySite = rows(({ site }) => site);
  const site = linearisedProportion(clusterCounts(bySite).clusters);
  const batch = linearisedProportion(clusterCounts(rows((own) => own.batch)).clusters);
  return {
    x: site.events,
    n: site.trials,
    batches: batches.length,
    sites: site.clusters,
    estimate: site.estimate,
    wilson_naive: limitsOrNull(wilsonInterval(site.events, site.trials, 0.95)),
    se_site_clusters: Math.sqrt(Number(orNull(site.variance))),
    design_effect_site: orNull(site.designEffect),
    wilson_rao_scott_site: limitsOrNull(
      orNull(raoScottInterval({ ...bySite, level: 0.95, floor: false }))?.interval,
    ),
    se_batch_clusters: Math.sqrt(Number(orNull(batch.variance))),
    design_effect_batch: orNull(batch.designEffect),
  };
}

/** Biological efficiency as a ratio of sums clustered by site: each method, and all of them. */
export function efficiencyRatios(harvested: readonly NetworkBatch[], context: ReferenceContext) {
  const rows = {
    y: harvested.map(({ freshKg }) => freshKg),
    x: harvested.map(({ dryKg }) => dryKg),
    cluster: harvested.map(({ site }) => site),
    conf: 0.95,
  };
  return {
    byMethod: ratios.run({ ...rows, domain: harvested.map(({ method }) => method) }, context),
    overall: ratios.run(rows, context),
  };
}
