import { compareArms } from './compare-arms';
import type { TrialAnswer } from './trial-answer';
import type { TrialData } from './trial-run';

/**
 * The planned analysis. First every run counts in the arm that was drawn for it, whatever was done (drawing made the arms
 * alike, and only this keeps them so); second only the runs made as drawn, which may no longer be alike.
 */
export function answerTrial(data: TrialData, asOf: string): TrialAnswer {
  return {
    asDrawn: compareArms(data, data.runs, asOf),
    asPlanned: compareArms(
      data,
      data.runs.filter(({ departures }) => departures.length === 0),
      asOf,
    ),
  };
}
