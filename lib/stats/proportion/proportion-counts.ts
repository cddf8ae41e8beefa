import { requireEventsOfTrials } from '../check-argument';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';

/** Events among trials of one group, such as contaminated units of all units made. */
export type ProportionCounts = { readonly events: number; readonly trials: number };

/** Throws unless both are counts and there are no more events than trials. */
export function requireCounts(argument: string, counts: ProportionCounts): void {
  if (typeof counts !== 'object' || counts === null)
    throw new ArgumentError(argument, 'must hold events and trials');
  requireEventsOfTrials(`${argument}.events`, counts.events, `${argument}.trials`, counts.trials);
}

export const NO_TRIALS: CannotCompute = cannotCompute(
  'no-data',
  'There are no units to take a proportion of.',
);
export const NO_TRIALS_IN_A_GROUP: CannotCompute = cannotCompute(
  'no-data',
  'One of the two groups has no units, so there is nothing to compare.',
);
