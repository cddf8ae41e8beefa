import { checkHeatRun } from '../check-heat-run';
import { addMinutes, minutesBetween } from '../treatment-reading';
import type { HeatWindow } from '../treatment-window';
import type { RunDue, RunFacts } from './run-facts';

/** A bath nobody has read for half a day is over, and somebody forgot to say so. */
const forgottenMinutes = 720;

/**
 * What a running hot-water bath or steam run needs now: a reading when there was none for longer than the window
 * allows between two, the heat when the last one lies outside the window, else the time still to hold.
 */
export function heatClock(run: RunFacts, window: HeatWindow): RunDue | null {
  if (run.endedAt !== null) return null;
  const { startedAt, now, loadCelsiusAtSpawning } = run;
  const here = run.readings.flatMap(({ at, place, celsius }) =>
    place === window.place && celsius !== null ? [{ at, place, celsius }] : [],
  );
  const last = here.at(-1);
  const minutes = Math.max(0, Math.floor(minutesBetween(last?.at ?? startedAt, now)));
  if (minutes > forgottenMinutes)
    return { kind: 'unfinished', urgency: 'overdue', at: last?.at ?? startedAt };
  if (last === undefined || minutes > window.maxGapMinutes)
    return { kind: 'heat-unread', urgency: 'now', at: last?.at ?? startedAt, minutes };
  const { celsius } = last;
  const check = checkHeatRun({ readings: here, endedAt: null, loadCelsiusAtSpawning }, window);
  const held = check.kind === 'value' ? Math.floor(check.value.minutesInWindow) : 0;
  const left = check.kind === 'value' ? check.value.minutesLeft : window.minMinutes;
  const doneAt = addMinutes(last.at, left);
  const clock = { urgency: 'now', minutes: held, minMinutes: window.minMinutes, doneAt } as const;
  if (left === 0) return { kind: 'heat-held', at: now, ...clock };
  if (celsius < window.lowCelsius) {
    const reached = here.some((reading) => reading.celsius >= window.lowCelsius);
    const kind = reached ? 'heat-below' : 'heat-warming';
    return { kind, urgency: 'now', at: last.at, celsius, limitCelsius: window.lowCelsius };
  }
  if (celsius > window.highCelsius)
    return { kind: 'heat-above', urgency: 'now', at: last.at, celsius, limitCelsius: window.highCelsius };
  return { kind: now < doneAt ? 'heat-holding' : 'heat-confirm', at: doneAt, ...clock };
}
