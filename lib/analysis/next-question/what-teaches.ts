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
 * @param spread of single batches around what the site can expect of the method. @param scale from what is compared to points in 100. @param unitsNoise what chance adds to one batch beside what varies,
 * in the square of what is compared.
 */
export function whatTeaches(
  { methods, by, expected }: Compared,
  verdict: NextVerdict,
  {
    spread,
    scale,
    unitsNoise,
  }: { readonly spread: Spread; readonly scale: number; readonly unitsNoise: number },
): Teaching {
  if (verdict.kind === 'cannot') return { kind: 'none', reason: 'too-thin' };
  if (verdict.equal.length === 0)
    return { kind: 'none', reason: verdict.worse.length === 0 ? 'one-method' : 'settled' };
  const place = (method: string) => methods.indexOf(method);
  const open = verdict.equal.map((method): Contrast => [place(verdict.leader), place(method)]);
  const reach = normalQuantile(1 - (1 - shownLevel) / 2);
  const widest = (covariance: readonly (readonly number[])[]) =>
    scale * reach * Math.max(...open.map((contrast) => contrastError(covariance, contrast)));
  const noise = (spread.batch + unitsNoise) / lessonBatches + spread.lot / lessonLots;
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

/** Variances of what one batch has of its own, and of spawn lots. */
export type Spread = { readonly batch: number; readonly lot: number };

export function spreadOf(fit: PlainFit): Spread {
  const varianceOf = (term: string) => fit.varianceComponents.find((one) => one.term === term)?.variance ?? 0;
  return {
    batch: (fit.residualStandardDeviation ?? 0) ** 2 + varianceOf('run') + varianceOf('batch'),
    lot: varianceOf('spawn lot'),
  };
}
