import type { Answer } from './answer';
import { checkFermentation, type FermentCheck } from './check-fermentation';
import { checkHeatRun, type HeatCheck } from './check-heat-run';
import { checkLimeSoak, type LimeCheck } from './check-lime-soak';
import type { TreatmentWindow } from './treatment-window';
import type { ReadingPlace } from './vocabulary';

export type RunReading = {
  readonly at: Date;
  readonly place: ReadingPlace;
  readonly celsius: number | null;
  readonly ph: number | null;
};

export type RunTimes = {
  readonly startedAt: Date;
  readonly endedAt: Date | null;
  readonly loadCelsiusAtSpawning: number | null;
};

/** A run held against its window; `none` where the method has nothing to check. */
export type RunJudgement =
  | { readonly kind: 'heat'; readonly check: Answer<HeatCheck> }
  | { readonly kind: 'lime'; readonly check: Answer<LimeCheck> }
  | { readonly kind: 'ferment'; readonly check: Answer<FermentCheck> }
  | { readonly kind: 'none' };

/** Holds a run against the window of its method; `now` counts for a run that has not ended. */
export function judgeRun(
  run: RunTimes,
  readings: readonly RunReading[],
  window: TreatmentWindow | null,
  now: Date,
): RunJudgement {
  if (window === null) return { kind: 'none' };
  const temperatures = readings.flatMap(({ at, place, celsius }) =>
    celsius === null ? [] : [{ at, place, celsius }],
  );
  switch (window.kind) {
    case 'heat':
      return { kind: 'heat', check: checkHeatRun({ ...run, readings: temperatures }, window) };
    case 'lime': {
      const phs = readings.flatMap(({ at, ph, celsius }) =>
        ph === null ? [] : [{ at, ph, waterCelsius: celsius }],
      );
      return { kind: 'lime', check: checkLimeSoak({ ...run, now, readings: phs }, window) };
    }
    case 'ferment':
      return {
        kind: 'ferment',
        check: checkFermentation(
          { startedAt: run.startedAt, drainedAt: run.endedAt, now, readings: temperatures },
          window,
        ),
      };
  }
}
