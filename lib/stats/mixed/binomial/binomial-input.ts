import { requireEventsOfTrials, requireFinite } from '../../check-argument';
import { ArgumentError } from '../../outcome';
import type { FixedTerm, RandomTerm } from '../design/fixed-term';
import type { FitStart } from '../fit-start';

/**
 * A binomial mixed model with the logit link: events of trials (contaminated units of units), log odds = fixed part + one
 * random intercept per level of each random term. A term with a level per row takes up variation between batches
 * beyond the binomial (overdispersion).
 */
export type BinomialMixedInput = {
  readonly events: ArrayLike<number>;
  /** Above 0, whole numbers. */
  readonly trials: ArrayLike<number>;
  readonly fixed: readonly FixedTerm[];
  /** May be empty: an ordinary logistic regression. */
  readonly random: readonly RandomTerm[];
  /** Whether the fixed part has an intercept. Default true. */
  readonly intercept?: boolean;
  /** A known part of the log odds. */
  readonly offset?: ArrayLike<number>;
  /**
   * Quadrature points per level: 1 (the default) is the Laplace approximation; more are possible with exactly one random
   * term (adaptive Gauss-Hermite; 9 to 25 are plenty).
   */
  readonly quadraturePoints?: number;
  /** Where the search begins; one that makes no sense is passed over. Default: middling variances, coefficients without them. */
  readonly start?: FitStart;
};

/** @throws ArgumentError naming the first argument that no data set can have. */
export function checkBinomialInput(input: BinomialMixedInput): void {
  const rows = input.events.length;
  if (input.trials.length !== rows)
    throw new ArgumentError('trials', `has ${input.trials.length} rows, not ${rows}`);
  for (let row = 0; row < rows; row++) {
    const trials = input.trials[row] as number;
    const events = input.events[row] as number;
    if (
      Number.isSafeInteger(events) &&
      Number.isSafeInteger(trials) &&
      events >= 0 &&
      events <= trials &&
      trials > 0
    )
      continue;
    requireEventsOfTrials(`events[${row}]`, events, `trials[${row}]`, trials);
    throw new ArgumentError(`trials[${row}]`, 'must be at least 1');
  }
  if (input.offset) {
    if (input.offset.length !== rows) {
      throw new ArgumentError('offset', `has ${input.offset.length} rows, not ${rows}`);
    }
    for (let row = 0; row < rows; row++) requireFinite(`offset[${row}]`, input.offset[row] as number);
  }
  const points = input.quadraturePoints ?? 1;
  if (!Number.isSafeInteger(points) || points < 1 || points > 101) {
    throw new ArgumentError('quadraturePoints', 'must be a whole number from 1 to 101');
  }
  if (points > 1 && input.random.length !== 1) {
    throw new ArgumentError('quadraturePoints', 'more than 1 needs exactly one random term');
  }
}
