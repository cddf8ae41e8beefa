import { type Answer, answer, cannotCompute } from './answer';
import { addMinutes, minutesBetween, type TemperatureReading } from './treatment-reading';
import type { FermentWindow } from './treatment-window';

export type FermentVerdict = 'as_planned' | 'cut_short' | 'too_long' | 'running';

export type FermentCheck = {
  readonly verdict: FermentVerdict;
  /** Days under water, 24 hours each, not rounded. */
  readonly days: number;
  /** Whole days as growers count them ("day 9 of 5-15"): rounded to the nearest. */
  readonly dayCount: number;
  readonly drainFrom: Date;
  readonly drainBy: Date;
  readonly coldestCelsius: number | null;
  readonly warmestCelsius: number | null;
};

const minutesPerDay = 1440;

/**
 * Checks a cold-water fermentation against its window in days, from going under water to draining. Half a day either
 * way is not judged: days are rounded first. Water temperatures are reported, no limit on them is published.
 */
export function checkFermentation(
  run: {
    readonly startedAt: Date;
    readonly drainedAt: Date | null;
    readonly now: Date;
    readonly readings: readonly TemperatureReading[];
  },
  window: FermentWindow,
): Answer<FermentCheck> {
  const days = minutesBetween(run.startedAt, run.drainedAt ?? run.now) / minutesPerDay;
  if (days < 0) return cannotCompute('end-before-start', { days });
  const dayCount = Math.round(days);
  const water = run.readings.filter((reading) => Number.isFinite(reading.celsius));
  const celsius = water.map((reading) => reading.celsius);
  const ended =
    dayCount < window.minDays ? 'cut_short' : dayCount > window.maxDays ? 'too_long' : 'as_planned';
  return answer({
    verdict: run.drainedAt === null ? 'running' : ended,
    days,
    dayCount,
    drainFrom: addMinutes(run.startedAt, window.minDays * minutesPerDay),
    drainBy: addMinutes(run.startedAt, window.maxDays * minutesPerDay),
    coldestCelsius: celsius.length === 0 ? null : Math.min(...celsius),
    warmestCelsius: celsius.length === 0 ? null : Math.max(...celsius),
  });
}
