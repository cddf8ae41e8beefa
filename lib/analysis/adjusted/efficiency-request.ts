import type { FitRequest } from '../fitting/fit-request';
import type { ModelBatch } from './model-batch';
import {
  fixedTerms,
  type LevelledOut,
  type RandomTermName,
  randomTerms,
  type SiteLevelling,
} from './model-terms';

export type WeighedBatch = ModelBatch & { readonly bePercent: number };

export function weighedBatches(batches: readonly ModelBatch[]): WeighedBatch[] {
  return batches.flatMap((batch) =>
    batch.bePercent === null ? [] : [{ ...batch, bePercent: batch.bePercent }],
  );
}

export const efficiencyRandom: readonly RandomTermName[] = ['site', 'site x method', 'spawn lot', 'run'];

/**
 * The linear mixed model of biological efficiency, each batch counting once. 'all': percent, total losses being 0, which is
 * what a grower of the method gets. 'cropped': log of the percent of the batches that gave something, which says how well
 * a method crops where it did not fail.
 */
export function efficiencyRequest(
  batches: readonly WeighedBatch[],
  options: {
    readonly of: 'all' | 'cropped';
    readonly levelledOut: LevelledOut;
    readonly sites: SiteLevelling;
    readonly random?: readonly RandomTermName[];
  },
): FitRequest {
  const own = options.of === 'all' ? batches : batches.filter(({ bePercent }) => bePercent > 0);
  const fixed = fixedTerms(own, options.levelledOut, options.sites);
  return {
    kind: 'linear',
    input: {
      response: own.map(({ bePercent }) => (options.of === 'all' ? bePercent : Math.log(bePercent))),
      fixed,
      random: randomTerms(own, options.random ?? efficiencyRandom),
    },
    ...(fixed[0]?.kind === 'factor' ? { meansOf: ['method'] } : {}),
  };
}
