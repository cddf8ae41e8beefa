import { tSurvival } from '../distribution/student-t';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute, type Interval } from '../outcome';
import type { RatiosByDomain } from './ratio-by-domain';
import { tInterval } from './t-interval';

export type DomainComparison = {
  readonly kind: 'estimate';
  readonly first: string;
  readonly second: string;
  /** First ratio minus second. */
  readonly estimate: number;
  readonly standardError: number;
  readonly interval: Interval;
  /** Two-sided, t(df); a reason when both ratios are without spread. */
  readonly pValue: number | CannotCompute;
  /** First ratio over second. */
  readonly ratioOfRatios: number | CannotCompute;
  /** Standard error of log(ratioOfRatios). */
  readonly standardErrorOfLog: number | CannotCompute;
  readonly method: string;
};

/**
 * The difference and the ratio of the ratios of two domains, from their joint covariance, so that clusters which hold
 * both domains make the comparison sharper. Not adjusted for other comparisons; see multiplicity/.
 *
 * A ratio of 0: a reason in place of the ratio of ratios.
 * @throws ArgumentError naming a domain that has no ratio.
 */
export function compareDomainRatios(ratios: RatiosByDomain, first: string, second: string): DomainComparison {
  const i = indexOf(ratios, 'first', first);
  const j = indexOf(ratios, 'second', second);
  const cell = (row: number, column: number) => elementAt(elementAt(ratios.covariance, row), column);
  const one = elementAt(ratios.domains, i).estimate;
  const two = elementAt(ratios.domains, j).estimate;
  const difference = one - two;
  const standardError = Math.sqrt(Math.max(0, cell(i, i) + cell(j, j) - 2 * cell(i, j)));
  const zero = cannotCompute(
    'zero-denominator',
    'One of the two has a ratio of zero, which has no logarithm.',
  );
  const logVariance = cell(i, i) / one ** 2 + cell(j, j) / two ** 2 - (2 * cell(i, j)) / (one * two);
  const bothPositive = one > 0 && two > 0;
  return {
    kind: 'estimate',
    first,
    second,
    estimate: difference,
    standardError,
    interval: tInterval(difference, standardError, ratios.df, ratios.level),
    pValue:
      standardError > 0
        ? 2 * tSurvival(Math.abs(difference / standardError), ratios.df)
        : cannotCompute('no-variation', 'Neither ratio varies between groups, so there is nothing to test.'),
    ratioOfRatios: bothPositive ? one / two : zero,
    standardErrorOfLog: bothPositive ? Math.sqrt(Math.max(0, logVariance)) : zero,
    method: 'difference of ratios, joint linearised covariance',
  };
}

function indexOf(ratios: RatiosByDomain, argument: string, domain: string): number {
  const index = ratios.domains.findIndex((entry) => entry.domain === domain);
  if (index < 0) throw new ArgumentError(argument, `there is no ratio for ${domain}`);
  return index;
}
