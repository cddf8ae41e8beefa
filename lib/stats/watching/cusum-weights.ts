import { requirePositive, requireProbability } from '../check-argument';

/** The shift a CUSUM listens for: odds of an event multiplied by `inControlOdds` now, by `alarmOdds` after a shift. */
export type CusumShift = { readonly inControlOdds: number; readonly alarmOdds: number };

/** Score of a unit that is an event, and of one that is not. */
export type CusumWeights = { readonly event: number; readonly noEvent: number };

/**
 * Log-likelihood ratio scores of the risk-adjusted Bernoulli CUSUM for a unit whose expected probability of an event
 * is `probability`: with R0, RA the two odds multipliers,
 * event: log((1 - p + R0 p) RA / ((1 - p + RA p) R0)), no event: log((1 - p + R0 p) / (1 - p + RA p)).
 *
 * Source: Steiner, Cook, Farewell & Treasure (2000, Biostatistics 1, 441-452, from memory).
 * alarmOdds 2 listens for a doubling of the odds, 0.5 for a halving.
 */
export function cusumWeights(probability: number, { inControlOdds, alarmOdds }: CusumShift): CusumWeights {
  requireProbability('probability', probability);
  requirePositive('inControlOdds', inControlOdds);
  requirePositive('alarmOdds', alarmOdds);
  const inControl = 1 - probability + inControlOdds * probability;
  const shifted = 1 - probability + alarmOdds * probability;
  return {
    event: Math.log((inControl * alarmOdds) / (shifted * inControlOdds)),
    noEvent: Math.log(inControl / shifted),
  };
}
