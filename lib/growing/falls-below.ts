import { courseInWindow } from './temperature-course';
import { addMinutes, minutesBetween, type TemperatureReading } from './treatment-reading';
import type { HeatWindow } from './treatment-window';

/** Thermometers and records keep tenths: inside from half a tenth outside, as in `checkHeatRun`. */
const readingToleranceCelsius = 0.05;

/** A time for which a load that had been in its window lay below it. */
export type FallBelow = {
  readonly from: Date;
  readonly to: Date;
  readonly minutes: number;
  readonly lowestCelsius: number;
  /** Longer than the window allows: what was held before does not count on. */
  readonly breaksHold: boolean;
};

/**
 * The falls of a load below its window after it had reached it, by straight lines between readings of the place the
 * window names. A fall that lasts until the last reading is one, too: nobody knows what came after.
 */
export function fallsBelow(
  readings: readonly TemperatureReading[],
  window: HeatWindow,
): readonly FallBelow[] {
  const here = readings
    .filter(({ place, celsius }) => place === window.place && Number.isFinite(celsius))
    .sort((first, second) => first.at.getTime() - second.at.getTime());
  const [first] = here;
  if (!first) return [];
  const points = here.map(({ at, celsius }) => ({ minute: minutesBetween(first.at, at), celsius }));
  const pieces = courseInWindow(
    points,
    window.lowCelsius - readingToleranceCelsius,
    window.highCelsius + readingToleranceCelsius,
    window.maxGapMinutes,
  );
  const falls: FallBelow[] = [];
  let reached = false;
  for (const [index, piece] of pieces.entries()) {
    if (piece.state !== 'below') {
      reached = true;
      continue;
    }
    if (!reached || pieces[index - 1]?.state === 'below') continue;
    const end =
      pieces.slice(index).find(({ state }) => state !== 'below')?.fromMinute ?? points.at(-1)?.minute;
    const toMinute = end ?? piece.toMinute;
    const minutes = toMinute - piece.fromMinute;
    const inside = points.filter(({ minute }) => minute >= piece.fromMinute && minute <= toMinute);
    falls.push({
      from: addMinutes(first.at, piece.fromMinute),
      to: addMinutes(first.at, toMinute),
      minutes,
      lowestCelsius: Math.min(window.lowCelsius, ...inside.map(({ celsius }) => celsius)),
      breaksHold: minutes > window.allowedDipMinutes,
    });
  }
  return falls;
}
