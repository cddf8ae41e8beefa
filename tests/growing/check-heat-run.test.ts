import { describe, expect, it } from 'vitest';
import { checkHotWaterRun, checkSteamRun } from '@/lib/growing/check-heat-run';
import { hotWaterWindowDefault, steamWindowDefault } from '@/lib/growing/method-defaults';
import { addMinutes, type TemperatureReading } from '@/lib/growing/treatment-reading';
import type { ReadingPlace } from '@/lib/growing/vocabulary';
import { expectReason, given } from './expect-value';

const start = new Date('2026-04-01T12:00:00Z');
const at = (minute: number) => addMinutes(start, minute);

/** Readings of one place as [minute, degrees Celsius]. */
function read(
  points: readonly (readonly [number, number])[],
  place: ReadingPlace = 'load_middle',
): readonly TemperatureReading[] {
  return points.map(([minute, celsius]) => ({ at: at(minute), place, celsius }));
}

function check(
  points: readonly (readonly [number, number])[],
  endMinute: number | null,
  loadCelsiusAtSpawning: number | null = null,
) {
  return checkHotWaterRun(
    { readings: read(points), endedAt: endMinute === null ? null : at(endMinute), loadCelsiusAtSpawning },
    hotWaterWindowDefault,
  );
}

describe('hot-water bath', () => {
  const good = [
    [0, 20],
    [30, 70],
    [60, 72],
    [90, 71],
    [110, 70],
    [120, 60],
  ] as const;

  it('counts minutes from when the middle of the load comes into the window, by straight lines', () => {
    const run = given(check(good, 120));
    // Enters 65.55 C at minute 27.33, leaves it at 114.45.
    expect(run.minutesInWindow).toBeCloseTo(114.45 - 27.33, 2);
    expect(run.verdict).toBe('as_planned');
    expect(run.minutesSure).toBeCloseTo(run.minutesInWindow, 10);
    expect(run.minutesLeft).toBe(0);
    expect(run.heldFrom?.toISOString()).toBe('2026-04-01T12:27:19.800Z');
    expect(run.highestCelsius).toBe(72);
  });

  it('takes the order of readings from their times', () => {
    expect(check([...good].reverse(), 120)).toEqual(check(good, 120));
  });

  it('says when a run was cut short, and by how much', () => {
    const run = given(
      check(
        [
          [0, 20],
          [30, 70],
          [55, 70],
          [60, 50],
        ],
        60,
      ),
    );
    expect(run.verdict).toBe('cut_short');
    expect(run.minutesInWindow).toBeLessThan(60);
    expect(run.minutesLeft).toBeCloseTo(60 - run.minutesInWindow, 10);
  });

  it('says when the load never reached the window, whatever the water did', () => {
    const readings = [
      ...read([
        [0, 15],
        [30, 50],
        [60, 60],
        [90, 61],
      ]),
      ...read(
        [
          [30, 75],
          [60, 80],
        ],
        'water',
      ),
    ];
    const run = given(
      checkHotWaterRun({ readings, endedAt: at(90), loadCelsiusAtSpawning: null }, hotWaterWindowDefault),
    );
    expect(run.verdict).toBe('never_reached');
    expect(run.highestCelsius).toBe(61);
  });

  it('does not judge by readings of the water alone', () => {
    const run = {
      readings: read(
        [
          [0, 70],
          [90, 72],
        ],
        'water',
      ),
      endedAt: at(90),
      loadCelsiusAtSpawning: null,
    };
    expectReason(checkHotWaterRun(run, hotWaterWindowDefault), 'no-load-readings');
    expect(checkHotWaterRun(run, { ...hotWaterWindowDefault, place: 'water', maxGapMinutes: 90 }).kind).toBe(
      'value',
    );
  });

  it('needs two readings', () => {
    expectReason(check([], 90), 'no-readings');
    expectReason(check([[30, 70]], 90), 'not-enough-readings');
  });

  it('joins a short dip and does not join a long one', () => {
    const dip = (minutes: number) => {
      const back = 30 + minutes;
      const points = [
        [0, 70],
        [30, 70],
        [31, 60],
        [back - 1, 60],
        [back, 70],
        [back + 20, 70],
        [back + 35, 70],
      ] as const;
      return given(check(points, back + 35));
    };
    expect(dip(4).verdict).toBe('as_planned');
    expect(dip(15).verdict).toBe('cut_short');
    expect(dip(15).minutesInWindow).toBeLessThan(40);
  });

  it('says too hot when the time was enough but above the window', () => {
    const run = given(
      check(
        [
          [0, 70],
          [10, 90],
          [30, 92],
          [60, 91],
          [70, 70],
        ],
        70,
      ),
    );
    expect(run.verdict).toBe('too_hot');
    expect(run.minutesAbove).toBeGreaterThan(50);
  });
});

describe('steam', () => {
  it('holds 90 C in the middle of the load for an hour, longer is no fault', () => {
    const points = Array.from({ length: 12 }, (_, index) => [index * 30, index === 0 ? 20 : 98] as const);
    const run = { readings: read(points), endedAt: at(330), loadCelsiusAtSpawning: 24 };
    expect(given(checkSteamRun(run, steamWindowDefault)).verdict).toBe('as_planned');
  });
});
