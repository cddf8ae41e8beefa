import { chiSquareSurvival } from '../distribution/chi-square';
import { type CannotCompute, cannotCompute } from '../outcome';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';

export type ChiSquareTest = {
  readonly kind: 'test';
  readonly statistic: number;
  readonly df: 1;
  readonly pValue: number;
  readonly method: string;
};

const ALL_ALIKE = cannotCompute(
  'no-variation',
  'Every unit of both groups had the same outcome, so there is nothing to test.',
);

/**
 * Pearson's chi-square test that two proportions of independent units are equal, on 1 degree of freedom. With
 * `continuity` Yates' correction is taken off each |observed - expected|, at most that difference itself.
 *
 * An empty group, or the same outcome throughout: a reason.
 * Source: Pearson (1900), Yates (1934), from memory.
 * @throws ArgumentError when counts are no counts or events exceed trials.
 */
export function chiSquareTest(
  first: ProportionCounts,
  second: ProportionCounts,
  continuity: boolean,
): ChiSquareTest | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  const trials = first.trials + second.trials;
  const events = first.events + second.events;
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  if (events === 0 || events === trials) return ALL_ALIKE;
  // All four |observed - expected| of a two-by-two table are equal.
  const gap = Math.abs(first.events * (second.trials / trials) - second.events * (first.trials / trials));
  const kept = continuity ? Math.max(0, gap - 0.5) : gap;
  const share = (events / trials) * ((trials - events) / trials);
  const statistic = (kept * kept * (1 / first.trials + 1 / second.trials)) / share;
  return {
    kind: 'test',
    statistic,
    df: 1,
    pValue: chiSquareSurvival(statistic, 1),
    method: continuity ? "chi-square with Yates' correction" : 'chi-square',
  };
}
