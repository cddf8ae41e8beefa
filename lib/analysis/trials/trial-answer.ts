import type { ShownFigure } from '../shown-figure';

export type ArmAnswer = {
  readonly armId: string;
  readonly planned: number;
  readonly made: number;
  /** Runs that count in this analysis. */
  readonly counted: number;
  /** Mean of the arm over sites, percent. */
  readonly figure: ShownFigure;
};

export type ArmContrast = {
  readonly armId: string;
  /** The arm minus the first one, in points. */
  readonly points: ShownFigure;
  /** Holm's, over all arms compared with the first one; null where it cannot be computed. */
  readonly pValue: number | null;
  readonly verdict: 'more' | 'fewer' | 'cannot-tell';
};

export type TrialComparison = {
  readonly arms: readonly ArmAnswer[];
  readonly contrasts: readonly ArmContrast[];
};

/** The planned analysis: by the arm that was drawn, and second only those runs that were made as drawn. */
export type TrialAnswer = {
  readonly asDrawn: TrialComparison;
  readonly asPlanned: TrialComparison;
};
