import { requireCount } from '../check-argument';
import { ArgumentError } from '../outcome';
import { requireNumber } from './argument';
import { logBinomialTerm } from './binomial';
import { ALL_ABOVE, ALL_BELOW, type Tails, tailsFromLogLower, tailsFromLogUpper } from './tails';

/*
 * The hypergeometric distribution: successes among `draws` units taken without replacement from `successes` and
 * `failures`. In the cumulative functions k may be any number and is rounded down.
 * ArgumentError for NaN, numbers that are no counts, or more draws than units.
 */

/** P(X = k); 0 outside the support. */
export function hypergeometricDensity(k: number, successes: number, failures: number, draws: number): number {
  return Math.exp(logHypergeometricDensity(k, successes, failures, draws));
}

/**
 * log P(X = k), -Infinity where it is 0: a ratio of three binomial terms of probability draws / units, each by
 * Loader's saddle-point expansion.
 */
export function logHypergeometricDensity(
  k: number,
  successes: number,
  failures: number,
  draws: number,
): number {
  requireNumber('k', k);
  requireUrn(successes, failures, draws);
  if (!Number.isInteger(k) || k < Math.max(0, draws - failures) || k > Math.min(successes, draws)) {
    return Number.NEGATIVE_INFINITY;
  }
  const units = successes + failures;
  // With nothing or everything drawn there is one outcome.
  if (draws === 0 || draws === units) return 0;
  const p = draws / units;
  const q = (units - draws) / units;
  return (
    logBinomialTerm(k, successes - k, p, q) +
    logBinomialTerm(draws - k, failures - draws + k, p, q) -
    logBinomialTerm(draws, units - draws, p, q)
  );
}

/** P(X <= k). */
export function hypergeometricCdf(k: number, successes: number, failures: number, draws: number): number {
  return tails(k, successes, failures, draws).lower;
}

/** P(X > k). */
export function hypergeometricSurvival(
  k: number,
  successes: number,
  failures: number,
  draws: number,
): number {
  return tails(k, successes, failures, draws).upper;
}

/** log P(X <= k). */
export function logHypergeometricCdf(k: number, successes: number, failures: number, draws: number): number {
  return tails(k, successes, failures, draws).logLower;
}

/** log P(X > k). */
export function logHypergeometricSurvival(
  k: number,
  successes: number,
  failures: number,
  draws: number,
): number {
  return tails(k, successes, failures, draws).logUpper;
}

/** Adds up the tail on the far side of the mean, where the terms shrink from the first on. */
function tails(k: number, successes: number, failures: number, draws: number): Tails {
  requireNumber('k', k);
  requireUrn(successes, failures, draws);
  const whole = Math.floor(k);
  if (whole < Math.max(0, draws - failures)) return ALL_ABOVE;
  if (whole >= Math.min(successes, draws)) return ALL_BELOW;
  const units = successes + failures;
  if (whole * units <= draws * successes) {
    let term = 1;
    let sum = 1;
    for (let i = whole; i > 0 && term > 1e-18 * sum; i -= 1) {
      term *= (i / (successes + 1 - i)) * ((failures - draws + i) / (draws + 1 - i));
      sum += term;
    }
    return tailsFromLogLower(logHypergeometricDensity(whole, successes, failures, draws) + Math.log(sum));
  }
  let term = 1;
  let sum = 1;
  for (let i = whole + 1; i < Math.min(successes, draws) && term > 1e-18 * sum; i += 1) {
    term *= ((successes - i) / (i + 1)) * ((draws - i) / (failures - draws + i + 1));
    sum += term;
  }
  return tailsFromLogUpper(logHypergeometricDensity(whole + 1, successes, failures, draws) + Math.log(sum));
}

function requireUrn(successes: number, failures: number, draws: number): void {
  requireCount('successes', successes);
  requireCount('failures', failures);
  requireCount('draws', draws);
  if (draws > successes + failures) {
    throw new ArgumentError('draws', `${draws} is more than the ${successes + failures} units there are`);
  }
}
