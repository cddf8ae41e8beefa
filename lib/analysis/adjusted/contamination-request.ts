import type { NewRow } from '@/lib/stats/mixed/design/fixed-term';
import type { FitRequest } from '../fitting/fit-request';
import type { ModelBatch } from './model-batch';
import {
  fixedTerms,
  type LevelledOut,
  type RandomTermName,
  randomTerms,
  type SiteLevelling,
} from './model-terms';

export type CountedBatch = ModelBatch & { readonly contaminated: number };

export function countedBatches(batches: readonly ModelBatch[]): CountedBatch[] {
  return batches.flatMap((batch) =>
    batch.contaminated === null ? [] : [{ ...batch, contaminated: batch.contaminated }],
  );
}

export const contaminationRandom: readonly RandomTermName[] = [
  'site',
  'site x method',
  'spawn lot',
  'run',
  'batch',
];

/**
 * The binomial-logit mixed model of units contaminated by the window's end: method and what is levelled out fixed, the
 * rest random. Batches that do not count are the caller's to leave out.
 */
export function contaminationRequest(
  batches: readonly CountedBatch[],
  options: {
    readonly levelledOut: LevelledOut;
    readonly sites: SiteLevelling;
    readonly random?: readonly RandomTermName[];
    readonly profiles?: boolean;
    readonly predict?: readonly NewRow[];
  },
): FitRequest {
  const fixed = fixedTerms(batches, options.levelledOut, options.sites);
  return {
    kind: 'binomial',
    input: {
      events: batches.map(({ contaminated }) => contaminated),
      trials: batches.map(({ units }) => units),
      fixed,
      random: randomTerms(batches, options.random ?? contaminationRandom),
    },
    ...(fixed[0]?.kind === 'factor' ? { meansOf: ['method'] } : {}),
    ...(options.profiles === undefined ? {} : { profiles: options.profiles }),
    ...(options.predict === undefined ? {} : { predict: options.predict }),
  };
}
