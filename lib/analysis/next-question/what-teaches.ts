import { normalQuantile } from '@/lib/stats/distribution/normal';
import { type Contrast, contrastError, narrowedCovariance } from '@/lib/stats/planning/expected-narrowing';
import type { PlainFit } from '../fitting/plain-fit';
import { shownLevel } from '../shown-figure';
import type { Compared } from './choose-next';
import type { NextVerdict, Teaching } from './next-answer';

/** Batches that a lesson is reckoned with: a month or two of a site. Our choice. */
const lessonBatches = 4;
/** Spawn lots they come from. Our choice. */
const lessonLots = 2;

/**
 * How far each method would narrow the widest open difference to the leader, were the site to make a few more batches of it:
 * half the width of its 95 % interval now and then. The information is that of the fitted model: the errors of what is
 * expected at this site, jointly, and what one more batch varies by; variances are taken as known. Each batch is taken
 * to be a treatment run of its own.
 *
 * @param scale from what is compared to points in 100. @param unitsNoise what chance adds to one batch beside what varies,
 * in the square of what is compared.
 */
export function whatTeaches(
  { methods, by, expected }: Compared,
  verdict: NextVerdict,
  { fit, scale, unitsNoise }: { readonly fit: PlainFit; readonly scale: number; readonly unitsNoise: number },
): Teaching {
  if (verdict.kind === 'cannot') return { kind: 'none', reason: 'too-thin' };
  if (verdict.equal.length === 0)
    return { kind: 'none', reason: verdict.worse.length === 0 ? 'one-method' : 'settled' };
  const place = (method: string) => methods.indexOf(method);
  const open = verdict.equal.map((method): Contrast => [place(verdict.leader), place(method)]);
  const reach = normalQuantile(1 - (1 - shownLevel) / 2);
  const widest = (covariance: readonly (readonly number[])[]) =>
    scale * reach * Math.max(...open.map((contrast) => contrastError(covariance, contrast)));
  const noise = noiseOf(fit, unitsNoise);
  const from = widest(expected.covariance);
  const known = methods.filter((_, at) => typeof expected.estimates[at] === 'number');
  const lessons = known
    .map((methodId) => ({
      methodId,
      from,
      to: widest(narrowedCovariance(expected.covariance, place(methodId), noise)),
    }))
    .sort((a, b) => a.to - b.to || (a.methodId < b.methodId ? -1 : 1));
  const [first, second] = open.toSorted(
    (a, b) => contrastError(expected.covariance, b) - contrastError(expected.covariance, a),
  )[0] ?? [0, 0];
  return {
    kind: 'lessons',
    batches: lessonBatches,
    pair: [methods[first] ?? '', methods[second] ?? ''],
    by,
    lessons,
  };
}

/** Variance of the mean of the batches of a lesson around what the site can expect of the method. */
function noiseOf(fit: PlainFit, unitsNoise: number): number {
  const varianceOf = (term: string) => fit.varianceComponents.find((one) => one.term === term)?.variance ?? 0;
  const perBatch =
    (fit.residualStandardDeviation ?? 0) ** 2 + varianceOf('run') + varianceOf('batch') + unitsNoise;
  return perBatch / lessonBatches + varianceOf('spawn lot') / lessonLots;
}
