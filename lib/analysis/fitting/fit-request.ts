import type { BinomialMixedInput } from '../../stats/mixed/binomial/binomial-input';
import type { BinomialPrediction } from '../../stats/mixed/binomial/predict-binomial';
import type { NewRow } from '../../stats/mixed/design/fixed-term';
import type { ExpectedTogether } from '../../stats/mixed/expected-together';
import type { LinearMixedInput } from '../../stats/mixed/linear/linear-input';
import type { LinearPrediction } from '../../stats/mixed/linear/predict-linear';
import type { MarginalMean } from '../../stats/mixed/means/marginal-means';
import type { PairwiseDifference } from '../../stats/mixed/means/pairwise-differences';
import type { DeviationInterval } from '../../stats/mixed/variance-interval';
import type { CannotCompute } from '../../stats/outcome';
import type { PlainFit } from './plain-fit';

/** What to work out from a fit besides the fit itself. Everything here is plain data and can go to another thread. */
export type FitQuestions = {
  /** Factors whose adjusted means and pairwise differences are wanted. */
  readonly meansOf?: readonly string[];
  /** Intervals of the standard deviations: the slow part, where they are followed by their profiles. */
  readonly profiles?: boolean;
  readonly predict?: readonly NewRow[];
  /** Sets of rows whose expectations are wanted jointly, for differences within a set. */
  readonly together?: readonly (readonly NewRow[])[];
  /** Confidence of all intervals; 0.95 by default. */
  readonly level?: number;
};

export type FitRequest = FitQuestions &
  (
    | { readonly kind: 'linear'; readonly input: LinearMixedInput }
    | { readonly kind: 'binomial'; readonly input: BinomialMixedInput }
  );

export type FitAnswer = {
  readonly kind: 'answer';
  readonly fit: PlainFit;
  readonly means: Readonly<
    Record<string, { readonly means: readonly MarginalMean[]; readonly pairs: readonly PairwiseDifference[] }>
  >;
  readonly profiles: readonly DeviationInterval[];
  readonly predictions: readonly (LinearPrediction | BinomialPrediction | CannotCompute)[];
  /** In the order of the sets asked for. */
  readonly together: readonly ExpectedTogether[];
};
