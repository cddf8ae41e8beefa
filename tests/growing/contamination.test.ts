import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ContaminationRecord, contaminationOutcome } from '@/lib/growing/contamination-outcome';
import { contaminationRatePercent } from '@/lib/growing/contamination-rate';
import { liveUnits } from '@/lib/growing/live-units';
import { expectReason, given } from './expect-value';

const batch: ContaminationRecord = {
  inoculatedUnits: 20,
  inoculatedOn: '2026-04-01',
  windowDays: 28,
  findings: [],
  losses: [],
  looks: [],
  today: '2026-06-01',
};

describe('contamination rate', () => {
  it('is 10 % for 2 of 20 and 0 for 0 of 20', () => {
    expect(given(contaminationRatePercent(2, 20))).toBe(10);
    expect(given(contaminationRatePercent(0, 20))).toBe(0);
    expect(given(contaminationRatePercent(1, 1))).toBe(100);
  });

  it('pools 2 of 20 and 5 of 10 to 23.33 %, not to the mean of 30 %', () => {
    expect(given(contaminationRatePercent(2 + 5, 20 + 10))).toBeCloseTo(23.33, 2);
  });

  it('is not defined without units, and more contaminated than inoculated is refused', () => {
    expectReason(contaminationRatePercent(5, 0), 'no-inoculated-units');
    expectReason(contaminationRatePercent(21, 20), 'more-than-inoculated');
    expectReason(contaminationRatePercent(0.25, 1), 'out-of-range');
    expectReason(contaminationRatePercent(-1, 20), 'out-of-range');
  });
});

describe('contamination outcome of a batch', () => {
  it('counts what was first found by the last day of the window, and later finds apart', () => {
    const outcome = given(
      contaminationOutcome({
        ...batch,
        findings: [
          { on: '2026-04-10', units: 1 },
          { on: '2026-04-29', units: 1 },
          { on: '2026-04-30', units: 3 },
        ],
      }),
    );
    expect(outcome).toEqual({
      kind: 'inspected',
      windowEnd: '2026-04-29',
      contaminatedByWindowEnd: 2,
      contaminatedAtAnyTime: 5,
      inoculatedUnits: 20,
    });
  });

  it('is not inspected when nobody looked on or after the end of the window', () => {
    const early = { ...batch, looks: ['2026-04-28'], findings: [{ on: '2026-04-12', units: 2 }] };
    expect(given(contaminationOutcome(early))).toEqual({
      kind: 'not-inspected',
      windowEnd: '2026-04-29',
      soFar: 2,
    });
    expect(given(contaminationOutcome(batch)).kind).toBe('not-inspected');
    expect(given(contaminationOutcome({ ...early, looks: ['2026-04-29'] })).kind).toBe('inspected');
    expect(given(contaminationOutcome({ ...batch, looks: ['2026-05-20'] }))).toMatchObject({
      contaminatedByWindowEnd: 0,
      contaminatedAtAnyTime: 0,
    });
  });

  it('is open until the last day of the window', () => {
    expect(given(contaminationOutcome({ ...batch, today: '2026-04-28' })).kind).toBe('window-open');
    expect(given(contaminationOutcome({ ...batch, today: '2026-04-29' })).kind).toBe('not-inspected');
  });

  it('is settled when no clean unit is left to look at', () => {
    const allBad = { ...batch, findings: [{ on: '2026-04-09', units: 20 }] };
    expect(given(contaminationOutcome(allBad))).toMatchObject({
      kind: 'inspected',
      contaminatedByWindowEnd: 20,
    });
    const goneOtherwise = {
      ...batch,
      findings: [{ on: '2026-04-09', units: 5 }],
      losses: [{ on: '2026-04-12', units: 15 }],
    };
    expect(given(contaminationOutcome(goneOtherwise))).toMatchObject({
      kind: 'inspected',
      contaminatedByWindowEnd: 5,
      inoculatedUnits: 20,
    });
  });

  it('refuses more units than were inoculated', () => {
    expectReason(
      contaminationOutcome({ ...batch, findings: [{ on: '2026-04-09', units: 21 }] }),
      'more-than-inoculated',
    );
    expectReason(
      contaminationOutcome({
        ...batch,
        findings: [{ on: '2026-04-09', units: 10 }],
        losses: [{ on: '2026-04-09', units: 11 }],
      }),
      'more-than-inoculated',
    );
    expectReason(contaminationOutcome({ ...batch, inoculatedUnits: 0 }), 'no-inoculated-units');
  });

  it('never counts more by the end of the window than at any time, nor more than inoculated', () => {
    const day = fc.integer({ min: 1, max: 30 }).map((number) => `2026-04-${String(number).padStart(2, '0')}`);
    const finding = fc.record({ on: day, units: fc.integer({ min: 1, max: 6 }) });
    fc.assert(
      fc.property(fc.array(finding, { maxLength: 6 }), fc.array(day), (findings, looks) => {
        const result = contaminationOutcome({ ...batch, findings, looks });
        if (result.kind !== 'value' || result.value.kind !== 'inspected') return;
        expect(result.value.contaminatedByWindowEnd).toBeLessThanOrEqual(result.value.contaminatedAtAnyTime);
        expect(result.value.contaminatedAtAnyTime).toBeLessThanOrEqual(20);
      }),
    );
  });
});

describe('units still standing', () => {
  it('keeps units left, isolated or cut out, and takes off the rest', () => {
    const contaminated = [
      { units: 2, action: 'discarded' },
      { units: 1, action: 'buried' },
      { units: 3, action: 'isolated' },
      { units: 1, action: 'cut_out' },
      { units: 1, action: 'left_in_place' },
    ] as const;
    expect(given(liveUnits(20, contaminated, 4))).toBe(13);
    expect(given(liveUnits(20, contaminated, 4, 13))).toBe(0);
    expectReason(liveUnits(20, contaminated, 18), 'more-than-inoculated');
  });
});
