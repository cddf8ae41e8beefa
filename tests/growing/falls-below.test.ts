import { describe, expect, it } from 'vitest';
import { fallsBelow } from '@/lib/growing/falls-below';
import { hotWaterWindowDefault } from '@/lib/growing/method-defaults';

const window = { ...hotWaterWindowDefault, lowCelsius: 65, highCelsius: 82 };
const at = (minute: number) => new Date(Date.UTC(2026, 3, 1, 8, minute));
const course = (...points: [number, number][]) =>
  fallsBelow(
    points.map(([minute, celsius]) => ({ at: at(minute), place: 'load_middle' as const, celsius })),
    window,
  );

describe('falls below the window', () => {
  it('are none while the load warms up and holds', () =>
    expect(course([0, 20], [30, 70], [60, 71], [90, 68])).toEqual([]));
  it('run from where the line crosses the limit to where it crosses back', () => {
    const [fall, ...others] = course([0, 70], [10, 70], [20, 60], [30, 70]);
    expect(others).toEqual([]);
    expect(fall?.minutes).toBeCloseTo(9.9, 1);
    expect(fall?.from.getTime()).toBeCloseTo(at(15).getTime(), -5);
    expect(fall).toMatchObject({ lowestCelsius: 60, breaksHold: true });
  });
  it('that are short enough do not break the hold', () =>
    expect(course([0, 70], [10, 66], [12, 64.5], [14, 66])[0]).toMatchObject({ breaksHold: false }));
  it('at the end last until the last reading', () =>
    expect(course([0, 70], [10, 60], [40, 50])[0]).toMatchObject({ to: at(40), lowestCelsius: 50 }));
  it('do not come from readings of the water', () =>
    expect(fallsBelow([{ at: at(0), place: 'water', celsius: 40 }], window)).toEqual([]));
});
