import { type Answer, answer, cannotCompute } from './answer';
import { type HeatHold, longestHold } from './heat-hold';
import { courseInWindow } from './temperature-course';
import { addMinutes, minutesBetween, type TemperatureReading } from './treatment-reading';
import type { HeatWindow } from './treatment-window';

/** Thermometers and records keep tenths, so a reading counts as inside from half a tenth outside. */
const readingToleranceCelsius = 0.05;

/** `too_hot`: the time would have been enough, but too much of it lay above the window. */
export type HeatVerdict = 'as_planned' | 'cut_short' | 'never_reached' | 'too_hot' | 'too_long' | 'running';

export type HeatCheck = {
  readonly verdict: HeatVerdict;
  /** Minutes of the longest hold inside the window, by straight lines between readings. */
  readonly minutesInWindow: number;
  /** The part of it that rests on readings no further apart than the window allows. */
  readonly minutesSure: number;
  readonly minutesAbove: number;
  /** Minutes still to go until the window's least time; 0 when reached. */
  readonly minutesLeft: number;
  readonly heldFrom: Date | null;
  readonly heldTo: Date | null;
  readonly highestCelsius: number;
  readonly longestGapMinutes: number;
  /** Whether the load had cooled enough when spawn went in; null when that was not recorded. */
  readonly cooledForSpawning: boolean | null;
};

export type HeatRun = {
  readonly readings: readonly TemperatureReading[];
  /** When the heat was taken away; null while the run goes on. */
  readonly endedAt: Date | null;
  readonly loadCelsiusAtSpawning: number | null;
};

function judge(hold: HeatHold, window: HeatWindow, running: boolean): HeatVerdict {
  if (running) return 'running';
  if (hold.insideMinutes >= window.minMinutes) {
    return window.maxMinutes !== null && hold.insideMinutes > window.maxMinutes ? 'too_long' : 'as_planned';
  }
  if (hold.insideMinutes + hold.aboveMinutes >= window.minMinutes) return 'too_hot';
  return hold.fromMinute === null ? 'never_reached' : 'cut_short';
}

/**
 * Checks a hot-water bath or steam run against its window: how long the place the window names (the middle of the
 * load) stayed inside it. Readings elsewhere, such as of the water, never count. Nothing is counted before the
 * first or after the last reading. "Cannot compute" when there are no readings of that place, only one, or when the
 * verdict would rest on a gap longer than the window allows: then `minutesSure` and `minutesIfHeld` say between
 * what the time lies. Comparison with a minimum allows 0.05 C, half the last digit of a reading.
 */
export function checkHeatRun(run: HeatRun, window: HeatWindow): Answer<HeatCheck> {
  const here = [...run.readings]
    .filter((reading) => reading.place === window.place && Number.isFinite(reading.celsius))
    .sort((first, second) => first.at.getTime() - second.at.getTime());
  const [first] = here;
  const last = here.at(-1);
  if (!first || !last) {
    return cannotCompute(run.readings.length === 0 ? 'no-readings' : 'no-load-readings', {
      place: window.place,
      otherReadings: run.readings.length,
    });
  }
  if (here.length < 2) return cannotCompute('not-enough-readings', { readings: here.length });
  const points = here.map(({ at, celsius }) => ({ minute: minutesBetween(first.at, at), celsius }));
  const low = window.lowCelsius - readingToleranceCelsius;
  const high = window.highCelsius + readingToleranceCelsius;
  const pieces = courseInWindow(points, low, high, window.maxGapMinutes);
  const hold = longestHold(pieces, window.allowedDipMinutes, false);
  const sure = longestHold(pieces, window.allowedDipMinutes, true);
  const running = run.endedAt === null;
  const unreadTail = run.endedAt === null ? 0 : Math.max(0, minutesBetween(last.at, run.endedAt));
  const stillHot = last.celsius >= low;
  const ifHeld = hold.insideMinutes + (stillHot ? unreadTail : 0);
  if (!running && sure.insideMinutes < window.minMinutes && ifHeld >= window.minMinutes) {
    return cannotCompute('gap-in-readings', {
      minutesSure: sure.insideMinutes,
      minutesIfHeld: ifHeld,
      minutesNeeded: window.minMinutes,
    });
  }
  const gaps = points.map((point, index) => point.minute - (points[index - 1]?.minute ?? point.minute));
  return answer({
    verdict: judge(hold, window, running),
    minutesInWindow: hold.insideMinutes,
    minutesSure: sure.insideMinutes,
    minutesAbove: hold.aboveMinutes,
    minutesLeft: Math.max(0, window.minMinutes - hold.insideMinutes),
    heldFrom: hold.fromMinute === null ? null : addMinutes(first.at, hold.fromMinute),
    heldTo: hold.toMinute === null ? null : addMinutes(first.at, hold.toMinute),
    highestCelsius: Math.max(...here.map((reading) => reading.celsius)),
    longestGapMinutes: Math.max(...gaps),
    cooledForSpawning:
      run.loadCelsiusAtSpawning === null ? null : run.loadCelsiusAtSpawning <= window.spawnAtOrBelowCelsius,
  });
}

/** The hot-water bath's check: `checkHeatRun` under the name the records use. */
export const checkHotWaterRun = checkHeatRun;

/** The steam run's check. */
export const checkSteamRun = checkHeatRun;
