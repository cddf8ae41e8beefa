import { marginalMoments } from '@/lib/stats/mixed/binomial/marginal-moments';
import type { PlainFit } from '../fitting/plain-fit';
import type { CountedBatch } from './contamination-request';

/** Correlation of two units of one batch whose site and method are known: lot, run and batch clump them. */
export function batchCorrelation(fit: PlainFit, batches: readonly CountedBatch[]): number {
  const found = batches.reduce((sum, { contaminated }) => sum + contaminated, 0);
  const units = batches.reduce((sum, batch) => sum + batch.units, 0);
  const share = Math.min(0.99, Math.max(0.01, found / units));
  const clumping = fit.varianceComponents
    .filter(({ term }) => term !== 'site' && term !== 'site x method')
    .reduce((sum, { variance }) => sum + variance, 0);
  const { mean, variance } = marginalMoments(Math.log(share / (1 - share)), clumping);
  return variance / (mean * (1 - mean));
}
