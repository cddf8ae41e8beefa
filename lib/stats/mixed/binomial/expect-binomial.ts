import type { NewRow } from '../design/fixed-term';
import { type ExpectedTogether, expectedTogether } from '../expected-together';
import type { BinomialMixedFit } from './fit-binomial';
import { LaplaceCriterion } from './laplace-criterion';
import { borderColumn } from './laplace-curvature';

/** What a binomial mixed model expects of each set of rows, as log odds, the rows of a set jointly; see `expectedTogether`. */
export function expectBinomial(
  fit: BinomialMixedFit,
  sets: readonly (readonly NewRow[])[],
): ExpectedTogether[] {
  const { model } = fit;
  const criterion = new LaplaceCriterion(model);
  criterion.value(Float64Array.of(...fit.theta, ...fit.fixed.working));
  const border = model.columns.map((column) => borderColumn(criterion, column));
  const normal = () => Number.POSITIVE_INFINITY;
  return sets.map(expectedTogether(model.system, model.terms, border, fit, normal));
}
