import { describe, expect, it } from 'vitest';
import { ArgumentError } from '@/lib/stats/outcome';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { ewmaMean, movingRangeDeviation } from '@/lib/stats/watching/ewma-mean';

/** Montgomery, Introduction to Statistical Quality Control, the worked EWMA example of ch. 9 (values from memory). */
const observed = [
  9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.2, 10.34, 9.03, 11.47, 10.51, 9.4, 10.08, 9.37, 10.62,
  10.31, 8.52, 10.84, 10.9, 9.33, 12.29, 11.5, 10.6, 11.08, 10.38, 11.62, 11.31, 10.52,
];

describe('ewmaMean', () => {
  it('gives the published averages, limits and signal', () => {
    const { points } = ewmaMean(observed, { centre: 10, sigma: 1, weight: 0.1, width: 2.7 });
    expect(points[0]?.value).toBeCloseTo(9.945, 10);
    expect(points[1]?.value).toBeCloseTo(9.7495, 10);
    expect(points[28]?.value).toBeCloseTo(10.6468, 4);
    expect(points[0]?.high).toBeCloseTo(10.27, 2);
    expect(points[29]?.high).toBeCloseTo(10.62, 2);
    expect(points.findIndex(({ signal }) => signal)).toBe(28);
  });

  it('scales with its values', () => {
    const design = { centre: 10, sigma: 1, weight: 0.2, width: 3 };
    const once = ewmaMean(observed, design).points;
    const tenfold = ewmaMean(
      observed.map((value) => 10 * value),
      { ...design, centre: 100, sigma: 10 },
    ).points;
    tenfold.forEach(({ value, low }, at) => {
      expect(value).toBeCloseTo(10 * (once[at]?.value ?? 0), 8);
      expect(low).toBeCloseTo(10 * (once[at]?.low ?? 0), 8);
    });
  });

  it('refuses what is no number and limits without width', () => {
    const design = { centre: 0, sigma: 1, weight: 0.2, width: 3 };
    expect(() => ewmaMean([Number.NaN], design)).toThrow(ArgumentError);
    expect(() => ewmaMean([1], { ...design, sigma: 0 })).toThrow(/sigma/);
  });
});

describe('movingRangeDeviation', () => {
  it('finds the standard deviation, and keeps finding it under a slow drift', () => {
    const random = seededRandom(2);
    const values = Array.from({ length: 20_000 }, () => 2 * random.normal());
    expect(movingRangeDeviation(values)).toBeCloseTo(2, 1);
    expect(movingRangeDeviation(values.map((value, at) => value + at / 1_000))).toBeCloseTo(2, 1);
  });

  it('says why it cannot', () => {
    expect(movingRangeDeviation([1])).toMatchObject({ reason: 'too-few-observations' });
    expect(movingRangeDeviation([1, 1, 1])).toMatchObject({ reason: 'no-variation' });
  });
});
