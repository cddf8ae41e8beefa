import { describe, expect, it } from 'vitest';
import { judgeRun, type RunReading } from '@/lib/growing/judge-run';
import {
  fermentWindowDefault,
  hotWaterWindowDefault,
  limeWindowDefault,
} from '@/lib/growing/method-defaults';
import { addMinutes } from '@/lib/growing/treatment-reading';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { windowMargin } from '@/lib/growing/window-margin';

const start = new Date('2026-03-01T08:00:00Z');
const reading = (minute: number, celsius: number | null, ph: number | null = null): RunReading => ({
  at: addMinutes(start, minute),
  place: ph === null ? 'load_middle' : 'water',
  celsius,
  ph,
});

function margin(window: TreatmentWindow, minutes: number | null, readings: readonly RunReading[]) {
  const endedAt = minutes === null ? null : addMinutes(start, minutes);
  const times = { startedAt: start, endedAt, loadCelsiusAtSpawning: null };
  return windowMargin(judgeRun(times, readings, window, addMinutes(start, 10_000)), window);
}

const bath = (minutes: number) =>
  margin(
    hotWaterWindowDefault,
    minutes,
    Array.from({ length: Math.floor(minutes / 10) + 1 }, (_, at) => reading(10 * at, 72)),
  );

describe('windowMargin', () => {
  it('tells well inside, just inside, short and too long of a bath, with the time held over the least time', () => {
    expect(bath(90)).toEqual({ standing: 'well', heldShare: 1.5 });
    expect(bath(70)?.standing).toBe('just');
    expect(bath(40)?.standing).toBe('outside');
    expect(bath(40)?.heldShare).toBeCloseTo(2 / 3);
    expect(bath(130)?.standing).toBe('long');
  });

  it('counts the time at the pH of a lime soak, and puts a weak bath outside whatever its time', () => {
    const soak = (ph: number) => margin(limeWindowDefault, 500, [reading(10, 15, ph), reading(490, 15, ph)]);
    expect(soak(12.4)).toEqual({ standing: 'well', heldShare: 500 / 360 });
    expect(soak(11.6)?.standing).toBe('outside');
  });

  it('counts days of a fermentation', () => {
    expect(margin(fermentWindowDefault, 10 * 1440, [])).toEqual({ standing: 'well', heldShare: 2 });
    expect(margin(fermentWindowDefault, 3 * 1440, [])?.standing).toBe('outside');
  });

  it('does not know without readings, and says nothing of a run that goes on', () => {
    expect(margin(hotWaterWindowDefault, 90, [])).toEqual({ standing: 'unknown', heldShare: null });
    expect(margin(hotWaterWindowDefault, null, [reading(0, 70), reading(20, 70)])).toBeUndefined();
  });
});
