import { requireCount, requirePositive, requireProbability } from '../check-argument';
import { ArgumentError, type CannotCompute } from '../outcome';
import { betaBinomialDensities } from './beta-binomial-densities';
import { type CusumShift, cusumWeights } from './cusum-weights';
import { type LatticeStep, latticeRunLength } from './lattice-run-length';

/** A kind of batch the chart will meet; all kinds of the list are taken as equally frequent. */
export type TypicalBatch = { readonly units: number; readonly probability: number };

export type CusumSetting = {
  readonly shift: CusumShift;
  /** Correlation of units within a batch, 0 up to 1. Ignoring it makes false alarms far more frequent. */
  readonly intraBatchCorrelation: number;
  /** Lattice points per unit of score. */
  readonly scale: number;
  /**
   * What becomes of a score between two lattice points: 'nearest' rounds it, and the answer is exact for the chart so
   * rounded; 'shared' gives each neighbour the share that keeps the mean, which comes closer to the chart as drawn.
   */
  readonly rounding: 'nearest' | 'shared';
  /** Odds of an event relative to the probabilities given: 1 = in control. */
  readonly trueOdds: number;
};

/**
 * Average run length of a CUSUM: how many batches (or units) it takes on average from 0 to an alarm when the odds of
 * an event are `trueOdds` times those expected. With 1 this is the mean time between false alarms.
 *
 * The chart on the lattice 1 / scale is solved as a Markov chain; batch counts are binomial, or beta-binomial where
 * units of a batch correlate.
 *
 * @throws ArgumentError for an empty list, a scale below 1, probabilities outside 0-1 or too fine a lattice.
 */
export function cusumRunLength(
  batches: readonly TypicalBatch[],
  limit: number,
  setting: CusumSetting,
): number | CannotCompute {
  requirePositive('limit', limit);
  return latticeRunLength(cusumLatticeSteps(batches, setting), Math.round(limit * setting.scale));
}

/** The chart's moves in lattice points, with their probabilities. */
export function cusumLatticeSteps(batches: readonly TypicalBatch[], setting: CusumSetting): LatticeStep[] {
  if (batches.length === 0) throw new ArgumentError('batches', 'must hold at least one kind of batch');
  requirePositive('scale', setting.scale);
  requirePositive('trueOdds', setting.trueOdds);
  const moves = new Map<number, number>();
  const add = (step: number, share: number) => {
    moves.set(step, (moves.get(step) ?? 0) + share);
  };
  for (const { units, probability } of batches) {
    requireCount('units', units);
    requireProbability('probability', probability);
    const score = cusumWeights(probability, setting.shift);
    const actual = (setting.trueOdds * probability) / (1 - probability + setting.trueOdds * probability);
    betaBinomialDensities(units, actual, setting.intraBatchCorrelation).forEach((density, events) => {
      const place = (events * score.event + (units - events) * score.noEvent) * setting.scale;
      const share = density / batches.length;
      const below = setting.rounding === 'nearest' ? Math.round(place) : Math.floor(place);
      const above = setting.rounding === 'nearest' ? 0 : place - below;
      add(below, share * (1 - above));
      if (above > 0) add(below + 1, share * above);
    });
  }
  return [...moves].map(([step, probability]) => ({ step, probability }));
}
