import { describe, expect, it } from 'vitest';
import {
  equivalentMinutes,
  equivalentMinutesOfCourse,
  zFromReductionTimes,
} from '@/lib/growing/equivalent-minutes';
import { expectReason, given } from './expect-value';

describe('equivalent minutes at 60 C, z 10', () => {
  it.each([
    [70, 30, 300],
    [65, 120, 379.5],
    [70, 90, 900],
    [60, 45, 45],
  ])('%d C for %d min equal %d min', (celsius, minutes, expected) => {
    expect(equivalentMinutes(celsius, minutes)).toBeCloseTo(expected, 1);
    const level = [
      { minute: 0, celsius },
      { minute: minutes, celsius },
    ];
    expect(given(equivalentMinutesOfCourse(level))).toBeCloseTo(expected, 1);
  });

  it('integrates a rising load exactly, as a fine sum does', () => {
    const rising = [
      { minute: 0, celsius: 50 },
      { minute: 40, celsius: 75 },
    ];
    let sum = 0;
    const steps = 20_000;
    for (let step = 0; step < steps; step += 1) {
      sum += equivalentMinutes(50 + (25 * (step + 0.5)) / steps, 40 / steps);
    }
    expect(given(equivalentMinutesOfCourse(rising))).toBeCloseTo(sum, 4);
  });

  it('takes two readings at one instant', () => {
    const step = [
      { minute: 0, celsius: 60 },
      { minute: 10, celsius: 60 },
      { minute: 10, celsius: 70 },
      { minute: 20, celsius: 70 },
    ];
    expect(given(equivalentMinutesOfCourse(step))).toBeCloseTo(110, 8);
  });

  it('needs two readings in order', () => {
    expectReason(equivalentMinutesOfCourse([{ minute: 0, celsius: 70 }]), 'not-enough-readings');
    expectReason(
      equivalentMinutesOfCourse([
        { minute: 10, celsius: 70 },
        { minute: 0, celsius: 70 },
      ]),
      'end-before-start',
    );
  });

  it('works z out of the reduction times of Abdul et al. 2011: 13.1 (paper 13.3) and 10.2', () => {
    expect(given(zFromReductionTimes(99.4, 11.3, 103, 6))).toBeCloseTo(13.1, 1);
    expect(given(zFromReductionTimes(99.4, 11.5, 103, 5.1))).toBeCloseTo(10.2, 1);
    expectReason(zFromReductionTimes(99.4, 6, 103, 6), 'out-of-range');
  });
});
