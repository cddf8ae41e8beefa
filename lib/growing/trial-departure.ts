import { addDays, type CalendarDate } from './calendar-date';

/** How a run of a trial differed from what was drawn for it. */
export const trialDepartures = [
  'other-treatment',
  'other-species',
  'other-container',
  'other-size',
  'late',
  'out-of-order',
  'shared-run',
  'told',
] as const;
export type TrialDeparture = (typeof trialDepartures)[number];

export type DrawnRun = {
  readonly plannedMethodId: string | null;
  readonly plannedSpeciesId: string;
  readonly plannedContainer: string;
  readonly plannedUnits: number;
  readonly plannedOn: CalendarDate;
  readonly lateAfterDays: number;
  readonly methodId: string | null;
  readonly speciesId: string;
  readonly container: string;
  readonly units: number;
  readonly inoculatedOn: CalendarDate;
  /** A run drawn for earlier at the same site was made later, or not at all. */
  readonly outOfOrder: boolean;
  /** Another run of the list was treated in the same load. */
  readonly sharedRun: boolean;
  /** What somebody wrote down, which no record shows. */
  readonly told: string | null;
};

/** A run with more than a fifth more or fewer units than planned says another thing. Our own choice. */
const sizeTolerance = 0.2;

/** What departed from the plan, in the order of `trialDepartures`; empty where the run was made as drawn. */
export function departuresOf(run: DrawnRun): TrialDeparture[] {
  const is: Record<TrialDeparture, boolean> = {
    'other-treatment': run.plannedMethodId !== null && run.methodId !== run.plannedMethodId,
    'other-species': run.speciesId !== run.plannedSpeciesId,
    'other-container': run.container !== run.plannedContainer,
    'other-size': Math.abs(run.units - run.plannedUnits) > sizeTolerance * run.plannedUnits,
    late: run.inoculatedOn > addDays(run.plannedOn, run.lateAfterDays),
    'out-of-order': run.outOfOrder,
    'shared-run': run.sharedRun,
    told: run.told !== null,
  };
  return trialDepartures.filter((departure) => is[departure]);
}
