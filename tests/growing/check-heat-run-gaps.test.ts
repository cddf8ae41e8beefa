import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkHotWaterRun } from '@/lib/growing/check-heat-run';
import { hotWaterWindowDefault } from '@/lib/growing/method-defaults';
import { fahrenheitToCelsius } from '@/lib/growing/temperature-units';
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

describe('a hot-water bath read with gaps, dips and other places', () => {
  const good = [
    [0, 20],
    [30, 70],
    [60, 72],
    [90, 71],
    [110, 70],
    [120, 60],
  ] as const;

  it('says too long past two hours', () => {
    expect(
      given(
        check(
          Array.from({ length: 9 }, (_, index) => [index * 20, 70] as const),
          160,
        ),
      ).verdict,
    ).toBe('too_long');
    expect(
      given(
        check(
          Array.from({ length: 7 }, (_, index) => [index * 20, 70] as const),
          120,
        ),
      ).verdict,
    ).toBe('as_planned');
  });

  it('cannot tell when the verdict would rest on a gap between readings', () => {
    const gap = check(
      [
        [0, 70],
        [20, 70],
        [70, 70],
        [80, 70],
      ],
      80,
    );
    expectReason(gap, 'gap-in-readings');
    if (gap.kind === 'cannot-compute') {
      expect(gap.values).toMatchObject({ minutesSure: 20, minutesIfHeld: 80, minutesNeeded: 60 });
    }
  });

  it('cannot tell when readings stop while the load is hot and the run goes on', () => {
    expectReason(
      check(
        [
          [0, 70],
          [30, 70],
        ],
        90,
      ),
      'gap-in-readings',
    );
    expect(
      given(
        check(
          [
            [0, 70],
            [30, 70],
            [40, 50],
          ],
          120,
        ),
      ).verdict,
    ).toBe('cut_short');
  });

  it('a gap does not matter when there was enough time without it', () => {
    const run = given(
      check(
        [
          [0, 70],
          [25, 70],
          [50, 70],
          [65, 70],
          [110, 70],
        ],
        110,
      ),
    );
    expect(run.verdict).toBe('as_planned');
    expect(run.longestGapMinutes).toBe(45);
    expect(run.minutesSure).toBe(65);
  });

  it('a running bath has its minutes so far and to go', () => {
    const run = given(
      check(
        [
          [0, 70],
          [20, 70],
          [40, 71],
        ],
        null,
      ),
    );
    expect(run).toMatchObject({ verdict: 'running', minutesInWindow: 40, minutesLeft: 20 });
  });

  it('takes 150 and 180 F, kept to a tenth of a degree, as inside', () => {
    for (const fahrenheit of [150, 180]) {
      const celsius = Number(fahrenheitToCelsius(fahrenheit).toFixed(1));
      const run = given(
        check(
          [
            [0, celsius],
            [30, celsius],
            [60, celsius],
          ],
          60,
        ),
      );
      expect(run.verdict).toBe('as_planned');
    }
    expect(
      given(
        check(
          [
            [0, 65.5],
            [30, 65.5],
            [60, 65.5],
          ],
          60,
        ),
      ).verdict,
    ).toBe('never_reached');
  });

  it('says whether the load had cooled to room temperature at spawning', () => {
    expect(given(check(good, 120, 25)).cooledForSpawning).toBe(true);
    expect(given(check(good, 120, 35)).cooledForSpawning).toBe(false);
    expect(given(check(good, 120)).cooledForSpawning).toBeNull();
  });

  it("follows a network's own window", () => {
    const run = {
      readings: read([
        [0, 75],
        [20, 78],
        [40, 78],
      ]),
      endedAt: at(40),
      loadCelsiusAtSpawning: null,
    };
    const own = { ...hotWaterWindowDefault, minMinutes: 30 };
    expect(given(checkHotWaterRun(run, own)).verdict).toBe('as_planned');
    expect(given(checkHotWaterRun(run, hotWaterWindowDefault)).verdict).toBe('cut_short');
  });

  it('two readings at one instant do no harm', () => {
    const run = given(
      check(
        [
          [0, 70],
          [30, 70],
          [30, 71],
          [60, 70],
        ],
        60,
      ),
    );
    expect(run.minutesInWindow).toBeCloseTo(60, 10);
  });

  it('a reading added on the straight line changes nothing', () => {
    const celsius = fc.double({ min: 20, max: 95, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(celsius, { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 1, max: 19 }),
        (course, minute) => {
          const points = course.map((one, index) => [index * 20, one] as const);
          const [first, second] = course;
          fc.pre(first !== undefined && second !== undefined);
          const extra = [minute, first + (minute / 20) * (second - first)] as const;
          const without = given(check(points, null));
          const withExtra = given(check([...points, extra], null));
          expect(withExtra.minutesInWindow).toBeCloseTo(without.minutesInWindow, 6);
          expect(without.minutesSure).toBeLessThanOrEqual(without.minutesInWindow + 1e-9);
          expect(without.minutesInWindow + without.minutesAbove).toBeLessThanOrEqual(
            (course.length - 1) * 20 + 1e-9,
          );
        },
      ),
    );
  });
});
