import { z } from 'zod';
import { clustersNeeded } from '../../../lib/stats/planning/clusters-needed';
import { twoMeansPower } from '../../../lib/stats/planning/two-means-power';
import { twoMeansSampleSize } from '../../../lib/stats/planning/two-means-sample-size';
import { twoProportionsPower } from '../../../lib/stats/planning/two-proportions-power';
import {
  twoProportionsSampleSize,
  twoProportionsSampleSizeBothTails,
} from '../../../lib/stats/planning/two-proportions-sample-size';
import { orNull } from '../or-null';
import { type ReferenceHandler, statedTolerance } from '../reference-handler';

const significance = z.number().default(0.05);
const clusters = { m: z.number().optional(), icc: z.number().optional(), cv: z.number().default(0) };
const proportionsPower = z.strictObject({
  n: z.number(),
  p1: z.number(),
  p2: z.number(),
  alpha: significance,
});
const proportionsSize = z.strictObject({
  p1: z.number(),
  p2: z.number(),
  power: z.number(),
  alpha: significance,
  ratio: z.number().optional(),
  ...clusters,
});
const means = {
  delta: z.number(),
  sd: z.number(),
  alpha: significance,
  type: z.enum(['two.sample', 'paired']).default('two.sample'),
};
const meansPower = z.strictObject({ n: z.number(), ...means });
const meansSize = z.strictObject({ power: z.number(), ...means, ...clusters });

function sizeOfProportions(asked: z.infer<typeof proportionsSize>) {
  const plan = { first: asked.p1, second: asked.p2, power: asked.power, significance: asked.alpha };
  const equal = orNull(twoProportionsSampleSize({ ...plan, ratio: 1 }));
  if (equal === null) return {};
  const answer: Record<string, unknown> = {
    n_per_group: equal.firstGroup,
    n_per_group_ceiling: equal.firstGroupWhole,
    n_per_group_continuity: equal.firstGroupCorrected,
    n_per_group_continuity_ceiling: equal.firstGroupCorrectedWhole,
    n_strict_two_sided: orNull(twoProportionsSampleSizeBothTails(plan)),
  };
  if (asked.ratio !== undefined) {
    const unequal = orNull(twoProportionsSampleSize({ ...plan, ratio: asked.ratio }));
    answer.unequal = {
      ratio_n2_over_n1: asked.ratio,
      n1: unequal?.firstGroup ?? null,
      n2: unequal?.secondGroup ?? null,
      n1_continuity: unequal?.firstGroupCorrected ?? null,
      n2_continuity: unequal?.secondGroupCorrected ?? null,
    };
  }
  if (asked.m !== undefined && asked.icc !== undefined) {
    const clustering = { meanSize: asked.m, intraClusterCorrelation: asked.icc };
    const alike = clustersNeeded(equal.firstGroup, { ...clustering, sizeVariation: 0 });
    const unlike = clustersNeeded(equal.firstGroup, { ...clustering, sizeVariation: asked.cv });
    answer.cluster = {
      design_effect: alike.designEffect,
      design_effect_unequal_sizes: unlike.designEffect,
      n_per_group: alike.observationsPerGroup,
      clusters_per_group: alike.clustersPerGroup,
      clusters_per_group_ceiling: alike.clustersPerGroupWhole,
      clusters_per_group_unequal: unlike.clustersPerGroup,
      clusters_per_group_unequal_ceiling: unlike.clustersPerGroupWhole,
    };
  }
  return answer;
}

function sizeOfMeans(asked: z.infer<typeof meansSize>) {
  const size = orNull(
    twoMeansSampleSize({
      difference: asked.delta,
      standardDeviation: asked.sd,
      power: asked.power,
      significance: asked.alpha,
      design: asked.type === 'paired' ? 'paired' : 'independent',
    }),
  );
  if (size === null) return {};
  const answer: Record<string, unknown> = {
    n: size.perGroup,
    n_ceiling: size.perGroupWhole,
    n_normal: size.perGroupNormal,
  };
  if (asked.m !== undefined && asked.icc !== undefined) {
    const needed = clustersNeeded(size.perGroup, {
      meanSize: asked.m,
      intraClusterCorrelation: asked.icc,
      sizeVariation: asked.cv,
    });
    answer.cluster = {
      design_effect: needed.designEffect,
      n: needed.observationsPerGroup,
      clusters: needed.clustersPerGroup,
      clusters_ceiling: needed.clustersPerGroupWhole,
    };
  }
  return answer;
}

export const handler: ReferenceHandler = {
  method: '12 sample size and power',
  tolerance(path, file, { input }) {
    const ofMeans = z.object({ delta: z.number() }).safeParse(input).success;
    const name = path.includes('strict') ? 'strict_relative' : ofMeans ? 't_relative' : 'relative';
    return { relative: statedTolerance(file, name), absolute: 0 };
  },
  run(caseInput) {
    const asked = z.union([proportionsPower, proportionsSize, meansPower, meansSize]).parse(caseInput);
    if ('p1' in asked) {
      if (!('n' in asked)) return sizeOfProportions(asked);
      const given = { first: asked.p1, second: asked.p2, perGroup: asked.n, significance: asked.alpha };
      return { power: twoProportionsPower(given), power_strict: twoProportionsPower(given, true) };
    }
    if (!('n' in asked)) return sizeOfMeans(asked);
    const given = {
      difference: asked.delta,
      standardDeviation: asked.sd,
      perGroup: asked.n,
      significance: asked.alpha,
      design: asked.type === 'paired' ? ('paired' as const) : ('independent' as const),
    };
    return { power: twoMeansPower(given), power_strict: twoMeansPower(given, true) };
  },
};
