import { expect, it } from 'vitest';
import type { AdjustedRates } from '@/lib/analysis/adjusted/adjusted-rates';
import type { FitAnswer } from '@/lib/analysis/fitting/fit-request';
import { methodPairs } from '@/lib/analysis/method-question/method-pairs';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { contaminatedBags } from '../../ui/figure/contaminated-bags';
import { simulatedLots } from '../lot-question/simulated-lots';

const network = { seed: 7, lots: 4, batchesPerLot: 12, lotDeviation: 0.8, badLogit: 0 };

const rates: AdjustedRates = {
  rates: [],
  differences: [
    {
      kind: 'difference',
      first: 'lime',
      second: 'bath',
      points: { estimate: 1, low: -3, high: 5 },
      pValue: 0.6,
      holmPValue: 0.6,
    },
  ],
  fewLevels: false,
};

/** A fit of yields in which lime gives more than the bath: 0.02 to 0.18 by itself, and so much among all pairs. */
const cropped = (holmPValue: number): FitAnswer => ({
  kind: 'answer',
  fit: {
    method: 'linear mixed model, REML',
    observations: 60,
    coefficients: [],
    varianceComponents: [],
    zeroVarianceTerms: [],
    minusTwoLogLikelihood: 0,
    parameters: 3,
    randomEffects: [],
    fitted: new Float64Array(),
    evaluations: 1,
    residualStandardDeviation: 0.2,
  },
  means: {
    method: {
      means: [],
      pairs: [
        {
          kind: 'estimate',
          first: 'lime',
          second: 'bath',
          estimate: 0.1,
          standardError: 0.04,
          degreesOfFreedom: 50,
          statistic: 2.5,
          pValue: 0.02,
          tukeyPValue: holmPValue,
          holmPValue,
          bonferroniPValue: holmPValue,
          interval: { kind: 'interval', low: 0.02, high: 0.18, level: 0.95, method: 't' },
          tukeyInterval: { kind: 'interval', low: -0.02, high: 0.22, level: 0.95, method: 't' },
          method: 't',
        },
      ],
    },
  },
  profiles: [],
  predictions: [],
  together: [],
});

const figures: { contamination: ShownFigure; yield: ShownFigure } = {
  contamination: contaminatedBags,
  yield: contaminatedBags,
};

const pairs = (of: FitAnswer) =>
  methodPairs({
    rates,
    rawOf: () => figures,
    company: { batches: simulatedLots(network), siteLogits: new Map(), lotLogits: new Map() },
    correlation: 0.1,
    siteByMethod: 0,
    weighed: [],
    all: undefined,
    cropped: of,
  });

it('lets what batches that cropped gave tell only where it does among all pairs', () => {
  expect(pairs(cropped(0.04))[0]).toMatchObject({ croppedTells: true });
  expect(pairs(cropped(0.06))[0]).toMatchObject({ croppedTells: false });
  expect(pairs(cropped(0.06))[0]?.croppedPercent?.low).toBeGreaterThan(0);
});
