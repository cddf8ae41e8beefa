import { ArgumentError } from '../../outcome';
import type { CodedTerms } from '../design/prepare-terms';

/**
 * The contrast whose value is the mean response at one level of a factor, averaged over the levels of all other factors
 * with equal weight and at the mean of every covariate: the reference grid of least-squares means (Searle, Speed &
 * Milliken 1980, The American Statistician 34, 216-221, from memory).
 */
export function meanContrast(terms: CodedTerms, factor: string, level: number): Float64Array {
  const { factors, covariates, columns } = terms.fixed;
  const target = factorIndex(terms, factor);
  const means = covariates.map(({ values }) => values.reduce((sum, value) => sum + value, 0) / values.length);
  return Float64Array.from(columns, ({ indicators, covariates: own }) => {
    let value = 1;
    for (const indicator of indicators) {
      if (indicator.factor === target) value *= indicator.level === level ? 1 : 0;
      else value /= factors[indicator.factor]?.levels.length as number;
    }
    return own.reduce((product, covariate) => product * (means[covariate] as number), value);
  });
}

/** @throws ArgumentError when the model has no such factor. */
export function factorIndex(terms: CodedTerms, factor: string): number {
  const index = terms.fixed.factors.findIndex(({ name }) => name === factor);
  if (index < 0) throw new ArgumentError('factor', `the model has no factor "${factor}"`);
  return index;
}
