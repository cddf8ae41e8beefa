import { requireFinite, requirePositive } from '../../check-argument';
import { ArgumentError } from '../../outcome';
import type { FixedTerm, RandomTerm } from '../design/fixed-term';
import type { FitStart } from '../fit-start';

/**
 * A linear mixed model: response = fixed part + one random intercept per level of each random term + residual,
 * the residual variance of a row being sigma^2 / weight.
 */
export type LinearMixedInput = {
  readonly response: ArrayLike<number>;
  readonly fixed: readonly FixedTerm[];
  /** May be empty: an ordinary linear model. */
  readonly random: readonly RandomTerm[];
  /** Whether the fixed part has an intercept. Default true. */
  readonly intercept?: boolean;
  /** Prior weights above 0, such as the kilograms behind a percentage. Default 1. */
  readonly weights?: ArrayLike<number>;
  /** A known part of the response, subtracted before fitting. */
  readonly offset?: ArrayLike<number>;
  /** Restricted (the default) or ordinary maximum likelihood. Compare fixed parts by likelihood only under 'ML'. */
  readonly method?: 'REML' | 'ML';
  /** Where the search begins; one that makes no sense is passed over. Default: variances all alike. */
  readonly start?: FitStart;
};

/** @throws ArgumentError naming the first argument that no data set can have. */
export function checkLinearInput(input: LinearMixedInput): void {
  const rows = input.response.length;
  requireAll('response', input.response, requireFinite);
  for (const name of ['weights', 'offset'] as const) {
    const values = input[name];
    if (!values) continue;
    if (values.length !== rows) throw new ArgumentError(name, `has ${values.length} rows, not ${rows}`);
    requireAll(name, values, name === 'weights' ? requirePositive : requireFinite);
  }
}

/** Checks every value, naming the first bad one by its row. */
function requireAll(
  name: string,
  values: ArrayLike<number>,
  check: (argument: string, value: number) => void,
): void {
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number;
    // The name is only put together for a value that might need it.
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) check(`${name}[${row}]`, value);
  }
}
