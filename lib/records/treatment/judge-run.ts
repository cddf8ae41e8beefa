import type { Answer } from '@/lib/growing/answer';
import { checkFermentation, type FermentCheck } from '@/lib/growing/check-fermentation';
import { checkHeatRun, type HeatCheck } from '@/lib/growing/check-heat-run';
import { checkLimeSoak, type LimeCheck } from '@/lib/growing/check-lime-soak';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import type { ReadingPlace } from '@/lib/growing/vocabulary';

export type RunReading = {
  readonly id: string;
  readonly at: Date;
  readonly place: ReadingPlace;
  readonly celsius: number | null;
  readonly ph: number | null;
};

type Run = {
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

export function judgeRun(
  run: Run,
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
