import { predictCount } from '@/lib/stats/mixed/binomial/predict-count';
import type { FitAnswer } from '../fitting/fit-request';
import { levelledFigure } from '../method-question/levelled-figure';
import { type FigureMark, type FigureMethod, type ShownFigure, shownLevel } from '../shown-figure';

const methods = {
  loss: {
    code: 'next-batch-loss',
    source:
      'Predictive distribution of a binomial mixed model by the Laplace approximation: Bates, Mächler, Bolker & Walker (2015), Journal of Statistical Software 67(1) (citation from memory)',
    clusteredBy: 'everything-random',
  },
  yield: {
    code: 'next-batch-yield',
    source:
      'Prediction from a linear mixed model by REML with Satterthwaite degrees of freedom: Henderson (1975), Biometrics 31:423-447 (citation from memory)',
    clusteredBy: 'everything-random',
  },
} as const satisfies Record<string, FigureMethod>;

type Prediction = FitAnswer['predictions'][number] | undefined;

export type PredictedLoss = {
  readonly figure: ShownFigure;
  readonly units: { readonly low: number; readonly high: number } | null;
};

/**
 * Contaminated in one more batch of so many units, percent, with the limits that hold its share 95 times in 100.
 *
 * @param ground how much it was learned from, as far as the site's members may know.
 */
export function predictedLoss(
  ground: ShownFigure,
  prediction: Prediction,
  units: number,
  fewLevels: boolean,
): PredictedLoss {
  if (prediction?.kind !== 'estimate' || prediction.method !== 'binomial mixed model prediction')
    return {
      figure: withMethod(
        levelledFigure([ground], 'percent', 'contamination', 'not-enough-data', false),
        methods.loss,
      ),
      units: null,
    };
  const { logit, logitStandardError: standardDeviation } = prediction.group;
  const { expected, low, high } = predictCount({
    units,
    logit,
    standardDeviation,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    level: shownLevel,
  });
  const percent = (count: number) => (100 * count) / units;
  const value = { estimate: percent(expected), low: percent(low), high: percent(high) };
  return {
    figure: withMethod(levelledFigure([ground], 'percent', 'contamination', value, fewLevels), methods.loss),
    units: { low, high },
  };
}

/** Biological efficiency of one more batch, percent, total losses as 0, with the limits that hold it 95 times in 100. */
export function predictedYield(ground: ShownFigure, prediction: Prediction): ShownFigure {
  const value =
    prediction?.kind === 'estimate' && prediction.method === 'linear mixed model prediction'
      ? {
          estimate: Math.max(0, prediction.group.estimate),
          low: Math.max(0, prediction.observation.interval.low),
          high: Math.max(0, prediction.observation.interval.high),
        }
      : 'not-enough-data';
  return withMethod(levelledFigure([ground], 'percent', 'yield', value, false), methods.yield);
}

function withMethod(figure: ShownFigure, method: FigureMethod): ShownFigure {
  return { ...figure, method, marks: ofModel(figure.marks) };
}

/** It is expected of one species and material: that batches of others taught it is no mixing of rates. */
function ofModel(marks: readonly FigureMark[]): readonly FigureMark[] {
  const own = marks.filter((mark) => mark !== 'species-pooled' && mark !== 'materials-pooled');
  return own.length < marks.length ? [...own, 'learned-from-all'] : own;
}
