import { describe, expect, it } from 'vitest';
import { checkLimeSoak } from '@/lib/growing/check-lime-soak';
import { limeWindowDefault } from '@/lib/growing/method-defaults';
import { addMinutes } from '@/lib/growing/treatment-reading';
import { expectReason, given } from './expect-value';

const start = new Date('2026-04-01T08:00:00Z');
const hour = (hours: number) => addMinutes(start, hours * 60);

function soak(hours: number | null, phs: readonly (readonly [number, number])[], nowHours = 24) {
  return checkLimeSoak(
    {
      startedAt: start,
      endedAt: hours === null ? null : hour(hours),
      now: hour(nowHours),
      readings: phs.map(([atHours, ph]) => ({ at: hour(atHours), ph, waterCelsius: 20 })),
    },
    limeWindowDefault,
  );
}

describe('cold lime soak', () => {
  it('is as planned after 8 h at pH 12.6', () => {
    const run = given(
      soak(8, [
        [0, 12.6],
        [8, 12.5],
      ]),
    );
    expect(run).toMatchObject({
      verdict: 'as_planned',
      minutesSubmerged: 480,
      minutesAtPh: 480,
      questions: [],
    });
    expect(run.restsOnOneReading).toBe(false);
  });

  it('is cut short under 6 h and too long over 12 h', () => {
    expect(given(soak(5, [[0, 12.6]])).verdict).toBe('cut_short');
    expect(given(soak(6, [[0, 12.6]])).verdict).toBe('as_planned');
    expect(given(soak(12, [[0, 12.6]])).verdict).toBe('as_planned');
    expect(given(soak(13, [[0, 12.6]])).verdict).toBe('too_long');
  });

  it('counts only the time at pH 12 or more, by straight lines between readings', () => {
    const falling = given(
      soak(8, [
        [0, 12.4],
        [8, 11.6],
      ]),
    );
    expect(falling.minutesAtPh).toBeCloseTo(240, 8);
    expect(falling.verdict).toBe('ph_low');
    expect(falling.questions.map(({ question }) => question.code)).toEqual(['below-window']);
  });

  it('lets one reading stand for the whole soak and says so', () => {
    expect(given(soak(8, [[1, 12.5]]))).toMatchObject({ minutesAtPh: 480, restsOnOneReading: true });
  });

  it('questions a reading above saturation without dropping it', () => {
    const run = given(
      soak(8, [
        [0, 13.2],
        [8, 12.6],
      ]),
    );
    expect(run.verdict).toBe('as_planned');
    expect(run.highestPh).toBe(13.2);
    expect(run.questions).toHaveLength(1);
    expect(run.questions[0]?.question.code).toBe('above-saturation');
  });

  it('cannot judge a long enough soak without a pH reading; a short one is cut short either way', () => {
    expectReason(soak(8, []), 'no-readings');
    expect(given(soak(3, []))).toMatchObject({ verdict: 'cut_short', minutesAtPh: null });
  });

  it('a running soak says when to lift out', () => {
    const run = given(soak(null, [[0, 12.6]], 4));
    expect(run.verdict).toBe('running');
    expect(run.minutesSubmerged).toBe(240);
    expect(run.liftOutFrom).toEqual(hour(6));
    expect(run.liftOutBy).toEqual(hour(12));
  });

  it('refuses an end before the start', () => {
    expectReason(soak(-1, [[0, 12.6]]), 'end-before-start');
  });
});
