/** A temperature at a number of minutes from any fixed start. */
export type CoursePoint = { readonly minute: number; readonly celsius: number };

export type CourseState = 'below' | 'inside' | 'above';

/**
 * A stretch of a run in one state. `sure` is false where the readings around it are too far apart for the straight
 * line between them to be trusted.
 */
export type CoursePiece = {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly state: CourseState;
  readonly sure: boolean;
};

function stateOf(celsius: number, low: number, high: number): CourseState {
  if (celsius < low) return 'below';
  return celsius > high ? 'above' : 'inside';
}

/** Minutes, inside a segment, at which the straight line crosses a limit. */
function crossings(start: CoursePoint, end: CoursePoint, limits: readonly number[]): readonly number[] {
  const rise = end.celsius - start.celsius;
  if (rise === 0) return [];
  return limits
    .map((limit) => start.minute + ((limit - start.celsius) / rise) * (end.minute - start.minute))
    .filter((minute) => minute > start.minute && minute < end.minute)
    .sort((first, second) => first - second);
}

/**
 * Cuts a run into stretches below, inside and above a window, by straight lines between neighbouring readings.
 * `points` in order of time, at most one per minute value; limits in degrees Celsius, both inside the window.
 */
export function courseInWindow(
  points: readonly CoursePoint[],
  lowCelsius: number,
  highCelsius: number,
  maxGapMinutes: number,
): readonly CoursePiece[] {
  const pieces: CoursePiece[] = [];
  for (const [index, end] of points.entries()) {
    const start = points[index - 1];
    if (!start || end.minute <= start.minute) continue;
    const sure = end.minute - start.minute <= maxGapMinutes;
    const cuts = [start.minute, ...crossings(start, end, [lowCelsius, highCelsius]), end.minute];
    for (const [at, toMinute] of cuts.entries()) {
      const fromMinute = cuts[at - 1];
      if (fromMinute === undefined) continue;
      const share = ((fromMinute + toMinute) / 2 - start.minute) / (end.minute - start.minute);
      const middle = start.celsius + share * (end.celsius - start.celsius);
      pieces.push({ fromMinute, toMinute, state: stateOf(middle, lowCelsius, highCelsius), sure });
    }
  }
  return pieces;
}
