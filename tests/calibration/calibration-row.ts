/** One setting of a simulation: so many clusters of unequal size, units of a cluster alike by `correlation`. */
export type Setting = { readonly clusters: number; readonly correlation: number; readonly rate: number };

export const CLUSTERS = [3, 6, 12, 30, 60] as const;
export const CORRELATIONS = [0, 0.1, 0.3] as const;
export const RATES = [0.01, 0.05, 0.1, 0.2, 0.4] as const;

/** What became of one simulated data set: the interval held the truth, missed it, or there was no answer. */
export type Outcome = 'covered' | 'missed-low' | 'missed-high' | 'no-answer';

export type Cell = {
  readonly replicates: number;
  /** Of the data sets with an answer, percent that held the truth. */
  readonly coveredPercent: number;
  readonly noAnswerPercent: number;
};

/** One line of the printed table: a cell for each true rate. */
export type CoverageRow = {
  readonly method: string;
  readonly clusters: number;
  readonly correlation: number;
  readonly cells: readonly Cell[];
};

/** A line about a test or an alarm: how often it cried wolf, against what it states. */
export type LevelRow = {
  readonly method: string;
  readonly setting: string;
  readonly stated: string;
  readonly found: string;
  readonly holds: boolean;
};

export function countOutcomes(outcomes: readonly Outcome[]): Cell {
  const answered = outcomes.filter((outcome) => outcome !== 'no-answer');
  const covered = answered.filter((outcome) => outcome === 'covered').length;
  return {
    replicates: outcomes.length,
    coveredPercent: answered.length === 0 ? Number.NaN : (100 * covered) / answered.length,
    noAnswerPercent: (100 * (outcomes.length - answered.length)) / outcomes.length,
  };
}

/** Where the truth lies against limits. */
export function outcomeOf(
  truth: number,
  interval: { readonly kind: string; readonly low?: number; readonly high?: number },
): Outcome {
  if (interval.low === undefined || interval.high === undefined) return 'no-answer';
  if (truth < interval.low) return 'missed-low';
  return truth > interval.high ? 'missed-high' : 'covered';
}
