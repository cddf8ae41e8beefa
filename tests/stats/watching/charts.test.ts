import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cusumLimit } from '@/lib/stats/watching/cusum-limit';
import { cusumPath } from '@/lib/stats/watching/cusum-path';
import { type CusumSetting, cusumRunLength } from '@/lib/stats/watching/cusum-run-length';
import { cusumWeights } from '@/lib/stats/watching/cusum-weights';
import { ewmaProportion } from '@/lib/stats/watching/ewma-proportion';
import { ewmaRunLength } from '@/lib/stats/watching/ewma-run-length';
import { ewmaWidth } from '@/lib/stats/watching/ewma-width';
import { latticeRunLength } from '@/lib/stats/watching/lattice-run-length';

const doubling = { inControlOdds: 1, alarmOdds: 2 };
const setting: CusumSetting = {
  shift: doubling,
  intraBatchCorrelation: 0,
  scale: 40,
  rounding: 'shared',
  trueOdds: 1,
};

describe('the CUSUM', () => {
  it('weighs a unit as in the published example of surgical risks', () => {
    // Steiner et al. (2000, Biostatistics 1, 446, from memory): for a low-risk patient 0.67 and -0.024.
    const weights = cusumWeights(0.024602428402739435, doubling);
    expect(weights.event).toBeCloseTo(0.669, 3);
    expect(weights.noEvent).toBeCloseTo(-0.024, 3);
  });

  it('expects to drift down in control and up after the shift', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.9, noNaN: true }), (p) => {
        const { event, noEvent } = cusumWeights(p, doubling);
        const shifted = (2 * p) / (1 + p);
        expect(p * event + (1 - p) * noEvent).toBeLessThan(0);
        expect(shifted * event + (1 - shifted) * noEvent).toBeGreaterThan(0);
      }),
    );
  });

  it('takes a batch in one step to where its units would take it, while the path stays above 0', () => {
    const units = [true, true, false, true].map((event) => ({
      events: event ? 1 : 0,
      units: 1,
      probability: 0.2,
    }));
    const byUnit = cusumPath(units, doubling, { limit: 9, reset: true });
    const byBatch = cusumPath([{ events: 3, units: 4, probability: 0.2 }], doubling, {
      limit: 9,
      reset: true,
    });
    expect(byBatch.path.at(-1)).toBeCloseTo(Number(byUnit.path.at(-1)), 12);
  });

  it('starts again from 0 after an alarm when told to', () => {
    const steps = Array.from({ length: 6 }, () => ({ events: 1, units: 1, probability: 0.1 }));
    const limit = 1;
    expect(cusumPath(steps, doubling, { limit, reset: true }).signals).toEqual([1, 3, 5]);
    expect(cusumPath(steps, doubling, { limit, reset: false }).signals).toEqual([1, 2, 3, 4, 5]);
    expect(() => cusumPath(steps, doubling, { limit: 0, reset: true })).toThrow(/limit/);
    expect(() =>
      cusumPath([{ events: 2, units: 1, probability: 0.1 }], doubling, { limit, reset: true }),
    ).toThrow(/events/);
  });

  it('runs on average as long as a chain that can be worked out by hand', () => {
    // Up one with probability p, else down one (not below 0), until 2: from 0, 1/p + 1/p^2 steps.
    for (const p of [0.1, 0.5, 0.9]) {
      const steps = [
        { step: 1, probability: p },
        { step: -1, probability: 1 - p },
      ];
      expect(latticeRunLength(steps, 2)).toBeCloseTo(1 / p + 1 / p ** 2, 8);
    }
    expect(latticeRunLength([{ step: -1, probability: 1 }], 3)).toMatchObject({ reason: 'out-of-range' });
    expect(() => latticeRunLength([{ step: 1, probability: 0.4 }], 3)).toThrow(/steps/);
  });

  it('runs longer with a higher limit and shorter after a shift or with alike units', () => {
    const batches = [{ units: 15, probability: 0.1 }];
    const length = (limit: number, change: Partial<CusumSetting> = {}) =>
      Number(cusumRunLength(batches, limit, { ...setting, ...change }));
    expect(length(5)).toBeGreaterThan(length(4));
    expect(length(4, { trueOdds: 2 })).toBeLessThan(length(4) / 5);
    expect(length(4, { intraBatchCorrelation: 0.2 })).toBeLessThan(length(4) / 2);
  });

  it('finds the lowest limit that keeps false alarms as rare as asked', () => {
    const batches = [{ units: 15, probability: 0.1 }];
    const answer = cusumLimit(batches, 150, setting);
    if (answer.kind !== 'limit') throw new Error(answer.explanation);
    expect(answer.runLength).toBeGreaterThanOrEqual(150);
    expect(Number(cusumRunLength(batches, answer.limit - 1 / 40, setting))).toBeLessThan(150);
    expect(cusumLimit(batches, 1e12, { ...setting, intraBatchCorrelation: 0.3, scale: 100 })).toMatchObject({
      reason: 'out-of-range',
    });
    expect(() => cusumLimit([], 150, setting)).toThrow(/batches/);
  });
});

describe('the EWMA', () => {
  const design = { centre: 0.1, weight: 0.2, units: 20, intraBatchCorrelation: 0 };

  it('is the plain proportion with a weight of 1 and stays at the centre on it', () => {
    const batches = [
      { events: 3, units: 20 },
      { events: 2, units: 20 },
    ];
    const options = { centre: 0.1, width: 3, intraBatchCorrelation: 0 };
    expect(ewmaProportion(batches, { ...options, weight: 1 }).points.map(({ value }) => value)).toEqual([
      0.15, 0.1,
    ]);
    const still = ewmaProportion([{ events: 2, units: 20 }], { ...options, weight: 0.3 }).points[0];
    expect(still).toMatchObject({ value: expect.closeTo(0.1, 14), signal: false });
    expect(() => ewmaProportion(batches, { ...options, weight: 0 })).toThrow(/weight/);
    expect(() => ewmaProportion([{ events: 0, units: 0 }], { ...options, weight: 1 })).toThrow(/units/);
  });

  it('with a weight of 1 alarms as often as a batch is outside, the exact binomial answer', () => {
    // 3 standard errors of 20 units at 10 % reach to 6.02 events, so an alarm is 7 or more: run length 1 / P(X >= 7).
    const outside = 0.002386;
    const length = Number(ewmaRunLength({ ...design, weight: 1 }, 3, 0.1));
    expect(length * outside).toBeCloseTo(1, 3);
  });

  it('runs shorter after a shift, and as long as asked at the width it finds', () => {
    const answer = ewmaWidth(design, 200);
    if (answer.kind !== 'limit') throw new Error(answer.explanation);
    expect(answer.runLength).toBeGreaterThanOrEqual(200);
    expect(Number(ewmaRunLength(design, answer.width - 0.01, 0.1))).toBeLessThan(200);
    expect(Number(ewmaRunLength(design, answer.width, 0.2))).toBeLessThan(15);
    expect(ewmaWidth(design, 1e11)).toMatchObject({ kind: 'limit' });
  });
});
