import { requireNonNegative, requireOpenProbability } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { total } from './cluster-sums';
import { tInterval } from './t-interval';

export type MeanOfRatios = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly standardError: number | CannotCompute;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  /** Rows with a denominator above 0. */
  readonly rows: number;
  /** Rows whose denominator is 0, which have no ratio. */
  readonly rowsLeftOut: number;
};

/**
 * The plain mean of the rows' own ratios, every row weighing the same however large, with sd / sqrt(n) and a t(n-1)
 * interval that takes rows as independent. Shown beside the ratio of sums, not in its place.
 *
 * No row with a ratio: a reason. One such row: the estimate with a reason in place of the interval.
 * @throws ArgumentError when the lists differ in length, a value is negative or not finite, or the level is out of range.
 */
export function meanOfRatios(input: {
  readonly numerator: readonly number[];
  readonly denominator: readonly number[];
  readonly level: number;
}): MeanOfRatios | CannotCompute {
  const { numerator, denominator, level } = input;
  requireOpenProbability('level', level);
  if (denominator.length !== numerator.length) {
    throw new ArgumentError('denominator', `has ${denominator.length} rows, numerator ${numerator.length}`);
  }
  const ratios: number[] = [];
  numerator.forEach((above, row) => {
    const below = elementAt(denominator, row);
    requireNonNegative(`numerator[${row}]`, above);
    requireNonNegative(`denominator[${row}]`, below);
    if (below > 0) ratios.push(above / below);
  });
  const n = ratios.length;
  if (n === 0) return cannotCompute('no-data', 'No batch has an amount to divide by.');
  const estimate = total(ratios) / n;
  const about = { estimate, method: 'mean of ratios', rows: n, rowsLeftOut: numerator.length - n };
  if (n === 1) {
    const reason = cannotCompute('too-few-observations', 'One batch alone does not show how batches vary.');
    return { kind: 'estimate', ...about, standardError: reason, interval: reason };
  }
  const standardError = Math.sqrt(total(ratios.map((ratio) => (ratio - estimate) ** 2)) / (n - 1) / n);
  return {
    kind: 'estimate',
    ...about,
    standardError,
    interval: tInterval(estimate, standardError, n - 1, level),
  };
}
