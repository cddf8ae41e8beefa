import { adjustedRates } from '../adjusted/adjusted-rates';
import { contaminationRandom, countedBatches } from '../adjusted/contamination-request';
import type { ModelBatch } from '../adjusted/model-batch';
import { fixedTerms, randomTerms } from '../adjusted/model-terms';
import type { Fit } from '../fitting/fit';
import type { FitRequest } from '../fitting/fit-request';
import { levelledFigure } from '../method-question/levelled-figure';
import type { ShownFigure } from '../shown-figure';
import type { TreatedBatch } from './batch-standing';
import type { StandingLoss } from './treatments-answer';

const factor = 'window';

/**
 * What batches of runs outside their window lose more than those well inside, in points: the binomial mixed model of the other
 * questions with the standing of the run as one more factor. Where no site has both, only the spread that sites usually have
 * tells the run from its site, and the limits are wide accordingly. Null without both standings.
 */
export async function standingDifference(
  treated: readonly TreatedBatch[],
  batches: readonly ModelBatch[],
  standings: readonly StandingLoss[],
  fitModel: Fit,
): Promise<ShownFigure | null> {
  const outside = standings.find(({ standing }) => standing === 'outside')?.loss;
  const well = standings.find(({ standing }) => standing === 'well')?.loss;
  if (outside === undefined || well === undefined) return null;
  const standingOf = new Map(treated.map(({ batch, run }) => [batch.facts.id, run.standing]));
  const counted = countedBatches(batches).flatMap((batch) => {
    const standing = standingOf.get(batch.id);
    return standing === undefined ? [] : [{ ...batch, standing }];
  });
  if (counted.length < 10) return null;
  const fixed = [
    ...fixedTerms(counted, { material: false, season: false }, 'partly'),
    { kind: 'factor' as const, name: factor, values: counted.map(({ standing }) => standing) },
  ];
  const request: FitRequest = {
    kind: 'binomial',
    input: {
      events: counted.map(({ contaminated }) => contaminated),
      trials: counted.map(({ units }) => units),
      fixed,
      random: randomTerms(counted, contaminationRandom),
    },
    meansOf: [factor],
  };
  const answer = await fitModel(request);
  if (answer.kind !== 'answer') return null;
  const rates = adjustedRates(answer, fixed, factor);
  const pair = rates.differences.find(
    ({ first, second }) => [first, second].includes('outside') && [first, second].includes('well'),
  );
  if (pair === undefined) return null;
  const figure = (value: Parameters<typeof levelledFigure>[3]) =>
    levelledFigure([outside, well], 'points', 'contamination', value, rates.fewLevels);
  if (pair.kind === 'cannot') return figure(pair.reason);
  const { estimate, low, high } = pair.points;
  return figure(
    pair.first === 'outside' ? { estimate, low, high } : { estimate: -estimate, low: -high, high: -low },
  );
}
