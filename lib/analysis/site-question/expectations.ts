import { tSurvival, tUpperQuantile } from '@/lib/stats/distribution/student-t';
import { marginalProbability } from '@/lib/stats/mixed/binomial/marginal-probability';
import type { Limited } from '../adjusted/adjusted-rates';
import type { FitAnswer } from '../fitting/fit-request';
import { shownLevel } from '../shown-figure';
import type { SiteCell } from './site-rows';

export type Expected = {
  readonly there: Limited;
  readonly typical: Limited;
  /** Two-sided p-value that the site does as a typical one would, for this site alone. */
  readonly pValue: number;
};

/**
 * Each site's expected rate with its own mix, percent, there and at a typical site. Limits of the mix average those of its
 * cells, as if all of a site's cells erred together: a little wide. What is known only as a spread (lot, run, batch) is
 * averaged over and is no part of the limits.
 */
export function expectations(
  { fit, predictions }: FitAnswer,
  cells: readonly SiteCell[],
  ownSpread: number,
): ReadonlyMap<string, Expected> {
  const varianceOf = (site: boolean) =>
    fit.varianceComponents
      .filter(({ term }) => (term === 'site' || term === 'site x method') === site)
      .reduce((sum, { variance }) => sum + variance, 0);
  const [ofSites, rest] = [varianceOf(true) + ownSpread, varianceOf(false)];
  const levels =
    fit.randomEffects.find(({ term }) => term === 'site')?.levels.length ?? Number.POSITIVE_INFINITY;
  const degreesOfFreedom = Math.max(1, levels - 1);
  const reach = tUpperQuantile((1 - shownLevel) / 2, degreesOfFreedom);
  const sums = new Map<string, Sums>();
  cells.forEach((cell, index) => {
    const [there, typical] = [predictions[2 * index], predictions[2 * index + 1]];
    if (!isBinomial(there) || !isBinomial(typical)) return;
    const error = Math.sqrt(Math.max(0, there.group.logitStandardError ** 2 - rest));
    const sum = sums.get(cell.siteId) ?? nothing;
    sums.set(cell.siteId, {
      units: sum.units + cell.units,
      apart: sum.apart + cell.units * (there.group.logit - typical.population.logit),
      error: sum.error + cell.units * error,
      there: added(sum.there, cell.units, there.group.logit, reach * error, rest),
      typical: added(
        sum.typical,
        cell.units,
        typical.population.logit,
        reach * typical.population.logitStandardError,
        rest + ofSites,
      ),
    });
  });
  return new Map(
    [...sums].map(([siteId, { units, apart, error, there, typical }]) => [
      siteId,
      {
        there: scaled(there, 100 / units),
        typical: scaled(typical, 100 / units),
        pValue: error === 0 ? 1 : 2 * tSurvival(Math.abs(apart) / error, degreesOfFreedom),
      },
    ]),
  );
}

const none: Limited = { estimate: 0, low: 0, high: 0 };

type Sums = {
  readonly units: number;
  /** Log odds apart from a typical site and their standard error, times units. */
  readonly apart: number;
  readonly error: number;
  readonly there: Limited;
  readonly typical: Limited;
};

const nothing: Sums = { units: 0, apart: 0, error: 0, there: none, typical: none };

function added(sum: Limited, units: number, logit: number, reach: number, variance: number): Limited {
  return {
    estimate: sum.estimate + units * marginalProbability(logit, variance),
    low: sum.low + units * marginalProbability(logit - reach, variance),
    high: sum.high + units * marginalProbability(logit + reach, variance),
  };
}

function scaled({ estimate, low, high }: Limited, factor: number): Limited {
  return { estimate: factor * estimate, low: factor * low, high: factor * high };
}

type Prediction = FitAnswer['predictions'][number];

function isBinomial(
  prediction: Prediction | undefined,
): prediction is Extract<Prediction, { method: 'binomial mixed model prediction' }> {
  return prediction?.kind === 'estimate' && prediction.method === 'binomial mixed model prediction';
}
