import { describe, expect, it } from 'vitest';
import { singleBatchContamination } from '@/lib/analysis/single-batch-contamination';

const rate = (contaminatedUnits: number, inoculatedUnits: number) =>
  singleBatchContamination({ contaminatedUnits, inoculatedUnits, asOf: '2026-12-31T12:00:00.000Z' });

describe('the contamination rate of one batch', () => {
  // Wilson (1927); the limits of 2 of 20 worked out with R's prop.test without continuity correction.
  it('gives 2 of 20 as 10 % with Wilson limits 2.79 to 30.10', () => {
    const figure = rate(2, 20);
    if (figure.kind !== 'figure' || figure.interval.kind !== 'interval') throw new Error('no interval');
    expect(figure.value).toBe(10);
    expect(figure.interval.low).toBeCloseTo(2.79, 2);
    expect(figure.interval.high).toBeCloseTo(30.1, 2);
    expect(figure.method).toMatchObject({ code: 'wilson', clusteredBy: 'unit' });
  });

  it('does not take none of 20 for certainty', () => {
    const figure = rate(0, 20);
    if (figure.kind !== 'figure' || figure.interval.kind !== 'interval') throw new Error('no interval');
    expect(figure.interval.low).toBe(0);
    expect(figure.interval.high).toBeGreaterThan(10);
  });

  it('refuses more contaminated than inoculated by name', () => {
    expect(() => rate(21, 20)).toThrow();
  });
});
