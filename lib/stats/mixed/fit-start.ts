import type { Coefficient } from './coefficients';

/**
 * Where the search for a model's estimates may begin: those of an earlier fit of nearly the same data, by name. From
 * near the end a search takes fewer evaluations. Where the likelihood has more than one optimum, as it may with few rows
 * and a variance near 0, it may end at another one than without a start.
 */
export type FitStart = {
  /** Standard deviation of each random term, 0 or more, in the units of the model's scale. */
  readonly deviations: Readonly<Record<string, number>>;
  /** Residual standard deviation above 0; linear models only. */
  readonly residual?: number;
  /** Fixed coefficients by name; binomial models only. */
  readonly coefficients?: Readonly<Record<string, number>>;
};

/** A ratio of standard deviations beyond this, either way, is no estimate of anything. */
const MOST = 100;
/** What is smaller is taken for 0, which the search looks beside at its end. */
const LEAST = 1e-3;

/**
 * The start as thetas, one a term: standard deviations over `residual` (1 for binomial models). A term without a start gets
 * `usual`. Undefined, so that the search begins as without a start, when a number in it cannot be an estimate.
 */
export function startingTheta(
  start: FitStart,
  terms: readonly string[],
  residual: number,
  usual: number,
): Float64Array | undefined {
  const theta = Float64Array.from(terms, (term) => {
    const deviation = start.deviations[term];
    return deviation === undefined ? usual : deviation / residual;
  });
  if (!theta.every((value) => value >= 0 && value <= MOST)) return undefined;
  return theta.map((value) => (value < LEAST ? 0 : value));
}

/** The coefficients in the order of `names`; undefined when one is missing or no number. */
export function startingCoefficients(
  { coefficients }: FitStart,
  names: readonly string[],
): Float64Array | undefined {
  const values = Float64Array.from(names, (name) => coefficients?.[name] ?? Number.NaN);
  return values.every((value) => Number.isFinite(value)) ? values : undefined;
}

/** What the next fit of nearly the same data may start from. Coefficients without an estimate are left out. */
export function startOfFit(fit: {
  readonly varianceComponents: readonly { readonly term: string; readonly standardDeviation: number }[];
  readonly coefficients: readonly Coefficient[];
  readonly residualStandardDeviation?: number;
}): FitStart {
  const deviations = Object.fromEntries(
    fit.varianceComponents.map(({ term, standardDeviation }) => [term, standardDeviation]),
  );
  if (fit.residualStandardDeviation !== undefined)
    return { deviations, residual: fit.residualStandardDeviation };
  const known = fit.coefficients.flatMap(({ name, estimate }) =>
    typeof estimate === 'number' ? [[name, estimate] as const] : [],
  );
  return { deviations, coefficients: Object.fromEntries(known) };
}
