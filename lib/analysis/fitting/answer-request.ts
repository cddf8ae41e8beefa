import { binomialDeviations } from '../../stats/mixed/binomial/binomial-deviations';
import { binomialMeansSource } from '../../stats/mixed/binomial/binomial-means';
import { expectBinomial } from '../../stats/mixed/binomial/expect-binomial';
import { fitBinomialMixed } from '../../stats/mixed/binomial/fit-binomial';
import { predictBinomial } from '../../stats/mixed/binomial/predict-binomial';
import { expectLinear } from '../../stats/mixed/linear/expect-linear';
import { fitLinearMixed } from '../../stats/mixed/linear/fit-linear';
import { linearDeviations } from '../../stats/mixed/linear/linear-deviations';
import { linearMeansSource } from '../../stats/mixed/linear/linear-means';
import { predictLinear } from '../../stats/mixed/linear/predict-linear';
import { type MeansSource, marginalMeans } from '../../stats/mixed/means/marginal-means';
import { pairwiseDifferences } from '../../stats/mixed/means/pairwise-differences';
import type { CannotCompute } from '../../stats/outcome';
import type { FitAnswer, FitRequest } from './fit-request';
import { plainFit } from './plain-fit';

/** Fits and answers the questions, here and now. Pages go through `runFit`, which does this off the event loop. */
export function answerRequest(request: FitRequest): FitAnswer | CannotCompute {
  const level = request.level ?? 0.95;
  if (request.kind === 'linear') {
    const fit = fitLinearMixed(request.input);
    if (fit.kind === 'cannot-compute') return fit;
    return {
      kind: 'answer',
      fit: plainFit(fit),
      means: request.meansOf ? meansOf(linearMeansSource(fit), request.meansOf, level) : {},
      profiles: request.profiles ? linearDeviations(fit, level) : [],
      predictions: request.predict ? predictLinear(fit, request.predict, level) : [],
      together: request.together ? expectLinear(fit, request.together) : [],
    };
  }
  const fit = fitBinomialMixed(request.input);
  if (fit.kind === 'cannot-compute') return fit;
  return {
    kind: 'answer',
    fit: plainFit(fit),
    means: request.meansOf ? meansOf(binomialMeansSource(fit), request.meansOf, level) : {},
    profiles: request.profiles ? binomialDeviations(fit, level) : [],
    predictions: request.predict ? predictBinomial(fit, request.predict, level) : [],
    together: request.together ? expectBinomial(fit, request.together) : [],
  };
}

function meansOf(source: MeansSource, factors: readonly string[], level: number): FitAnswer['means'] {
  return Object.fromEntries(
    factors.map((factor) => [
      factor,
      {
        means: marginalMeans(source, factor, level),
        pairs: pairwiseDifferences(source, factor, level),
      },
    ]),
  );
}
