import { describe, expect, it } from 'vitest';
import { checkFermentation } from '@/lib/growing/check-fermentation';
import { fermentWindowDefault } from '@/lib/growing/method-defaults';
import { addMinutes } from '@/lib/growing/treatment-reading';
import { expectReason, given } from './expect-value';

const start = new Date('2026-04-01T10:00:00Z');
const day = (days: number) => addMinutes(start, days * 1440);

function ferment(drained: number | null, now = 40, celsius: readonly number[] = []) {
  return checkFermentation(
    {
      startedAt: start,
      drainedAt: drained === null ? null : day(drained),
      now: day(now),
      readings: celsius.map((one, index) => ({ at: day(index), place: 'water', celsius: one })),
    },
    fermentWindowDefault,
  );
}

describe('cold-water fermentation', () => {
  it.each([
    [4.4, 'cut_short'],
    [4.6, 'as_planned'],
    [9, 'as_planned'],
    [15.4, 'as_planned'],
    [16, 'too_long'],
  ])('drained after %d days: %s', (days, verdict) => {
    expect(given(ferment(days)).verdict).toBe(verdict);
  });

  it('a running one says which day it is and when to drain', () => {
    const run = given(ferment(null, 9.1));
    expect(run).toMatchObject({ verdict: 'running', dayCount: 9 });
    expect(run.drainFrom).toEqual(day(5));
    expect(run.drainBy).toEqual(day(15));
  });

  it('reports the coldest and warmest water, or that none was read', () => {
    expect(given(ferment(9, 40, [18, 22, 20]))).toMatchObject({ coldestCelsius: 18, warmestCelsius: 22 });
    expect(given(ferment(9))).toMatchObject({ coldestCelsius: null, warmestCelsius: null });
  });

  it('refuses draining before the start', () => {
    expectReason(ferment(-1), 'end-before-start');
  });
});
