import { type Answer, answer, cannotCompute } from './answer';
import { type PhQuestion, questionPh } from './question-ph';
import { courseInWindow } from './temperature-course';
import { addMinutes, minutesBetween, type PhReading } from './treatment-reading';
import type { LimeWindow } from './treatment-window';

export type LimeVerdict = 'as_planned' | 'cut_short' | 'too_long' | 'ph_low' | 'running';

export type LimeCheck = {
  readonly verdict: LimeVerdict;
  /** Minutes from going in to coming out (or to `now` while running). */
  readonly minutesSubmerged: number;
  /** Minutes of those at or above the window's pH; null without a pH reading. */
  readonly minutesAtPh: number | null;
  readonly lowestPh: number | null;
  readonly highestPh: number | null;
  /** With a single reading the pH is taken to have held for the whole soak. */
  readonly restsOnOneReading: boolean;
  readonly questions: readonly { readonly reading: PhReading; readonly question: PhQuestion }[];
  /** Earliest and latest time to lift out. */
  readonly liftOutFrom: Date;
  readonly liftOutBy: Date;
};

export type LimeSoak = {
  readonly startedAt: Date;
  readonly endedAt: Date | null;
  readonly now: Date;
  readonly readings: readonly PhReading[];
};

/** pH by straight lines between readings, held level before the first and after the last. */
function minutesAtOrAbove(
  readings: readonly PhReading[],
  minPh: number,
  startedAt: Date,
  end: number,
): number {
  const points = readings.map(({ at, ph }) => ({ minute: minutesBetween(startedAt, at), celsius: ph }));
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) return 0;
  const level = [
    ...(first.minute > 0 ? [{ minute: 0, celsius: first.celsius }] : []),
    ...points,
    ...(last.minute < end ? [{ minute: end, celsius: last.celsius }] : []),
  ];
  return courseInWindow(level, minPh, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)
    .filter((piece) => piece.state === 'inside')
    .reduce(
      (sum, piece) => sum + Math.max(0, Math.min(piece.toMinute, end) - Math.max(piece.fromMinute, 0)),
      0,
    );
}

/**
 * Checks a cold lime soak against its window: time under water, and time at or above the window's pH.
 * A lime bath with undissolved lime holds its pH, so a value is taken to hold before the first and after the last
 * reading. Readings above saturation at their temperature are listed as questions, not dropped. Without any pH
 * reading a soak that lasted long enough is "cannot compute"; one that was too short is cut short either way.
 */
export function checkLimeSoak(soak: LimeSoak, window: LimeWindow): Answer<LimeCheck> {
  const running = soak.endedAt === null;
  const minutesSubmerged = minutesBetween(soak.startedAt, soak.endedAt ?? soak.now);
  if (minutesSubmerged < 0) return cannotCompute('end-before-start', { minutes: minutesSubmerged });
  const readings = [...soak.readings].sort((first, second) => first.at.getTime() - second.at.getTime());
  const minutesAtPh =
    readings.length === 0 ? null : minutesAtOrAbove(readings, window.minPh, soak.startedAt, minutesSubmerged);
  const short = minutesSubmerged < window.minMinutes;
  if (!running && !short && minutesAtPh === null) {
    return cannotCompute('no-readings', { minutesSubmerged, minutesNeeded: window.minMinutes });
  }
  const low = minutesAtPh !== null && minutesAtPh < window.minMinutes;
  const ended = short ? 'cut_short' : low ? 'ph_low' : 'as_planned';
  const phs = readings.map((reading) => reading.ph);
  return answer({
    verdict: running
      ? 'running'
      : ended === 'as_planned' && minutesSubmerged > window.maxMinutes
        ? 'too_long'
        : ended,
    minutesSubmerged,
    minutesAtPh,
    lowestPh: phs.length === 0 ? null : Math.min(...phs),
    highestPh: phs.length === 0 ? null : Math.max(...phs),
    restsOnOneReading: readings.length === 1,
    questions: readings.flatMap((reading) => {
      const question = questionPh(reading.ph, reading.waterCelsius, window);
      return question ? [{ reading, question }] : [];
    }),
    liftOutFrom: addMinutes(soak.startedAt, window.minMinutes),
    liftOutBy: addMinutes(soak.startedAt, window.maxMinutes),
  });
}
