import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classifyContamination } from '@/lib/analysis/comparison/classify-contamination';
import { addDays } from '@/lib/growing/calendar-date';
import { contaminationOutcome } from '@/lib/growing/contamination-outcome';
import { bags } from '../bags-of';

const after = '2026-12-31';
const reasonOf = (changes: Parameters<typeof bags>[0], today = after) => {
  const answer = classifyContamination(bags(changes), today);
  return answer.kind === 'left-out' ? answer.reason : answer.kind;
};

describe('which batches enter the contamination rate', () => {
  it('lets a batch enter on the day its window ends, with nothing written', () => {
    expect(reasonOf({}, '2026-04-28')).toBe('window-open');
    expect(reasonOf({}, '2026-04-29')).toBe('counted');
  });

  it('counts a batch closed or not', () => {
    expect(reasonOf({ closedOn: '2026-05-20' })).toBe('counted');
    expect(reasonOf({ closedOn: null })).toBe('counted');
  });

  it('leaves out a batch nobody looked at on or after the end of its window, though something was found before', () => {
    expect(reasonOf({ lastInspectedOn: null })).toBe('not-inspected');
    expect(
      reasonOf({ lastInspectedOn: '2026-04-28', contaminatedByWindowEnd: 2, contaminatedAtAnyTime: 2 }),
    ).toBe('not-inspected');
    expect(reasonOf({ lastInspectedOn: '2026-04-29' })).toBe('counted');
  });

  it('counts a batch of which nothing clean was left to look at', () => {
    const lost = { lastInspectedOn: '2026-04-10', contaminatedByWindowEnd: 15, contaminatedAtAnyTime: 15 };
    expect(reasonOf({ ...lost, lostClean: 5 })).toBe('counted');
    expect(reasonOf({ ...lost, lostClean: 4 })).toBe('not-inspected');
  });

  it('leaves out voided batches and those without a window', () => {
    expect(reasonOf({ voided: true })).toBe('voided');
    expect(reasonOf({ contaminationAssessedOn: null })).toBe('no-window');
  });

  it('counts 2 of 20 by the window and 5 at any time, lost units staying among the 20', () => {
    const facts = bags({ contaminatedByWindowEnd: 2, contaminatedAtAnyTime: 5, lostClean: 3 });
    expect(classifyContamination(facts, after)).toEqual({
      kind: 'counted',
      units: 20,
      byWindowEnd: 2,
      atAnyTime: 5,
      lostClean: 3,
    });
  });

  it('agrees with the outcome of a single batch that its page shows', () => {
    const day = fc.integer({ min: 0, max: 60 });
    const some = fc.array(fc.record({ day, units: fc.integer({ min: 1, max: 4 }) }), { maxLength: 2 });
    fc.assert(
      fc.property(some, some, fc.array(day, { maxLength: 2 }), day, (found, lost, looked, age) => {
        const on = (days: number) => addDays('2026-04-01', days);
        const findings = found.map((one) => ({ on: on(one.day), units: one.units }));
        const losses = lost.map((one) => ({ on: on(one.day), units: one.units }));
        const looks = looked.map(on);
        const record = {
          inoculatedUnits: 20,
          inoculatedOn: '2026-04-01',
          windowDays: 28,
          findings,
          losses,
          looks,
        };
        const single = contaminationOutcome({ ...record, today: on(age) });
        const sum = (of: readonly { units: number }[]) => of.reduce((total, { units }) => total + units, 0);
        const seen = [...looks, ...findings.map((one) => one.on)].sort();
        const pooled = classifyContamination(
          bags({
            contaminatedByWindowEnd: sum(findings.filter((one) => one.on <= '2026-04-29')),
            contaminatedAtAnyTime: sum(findings),
            lostClean: sum(losses),
            lastInspectedOn: seen.at(-1) ?? null,
          }),
          on(age),
        );
        if (single.kind !== 'value') throw new Error(single.reason);
        const outcome = single.value;
        if (outcome.kind === 'inspected') {
          expect(pooled).toMatchObject({
            kind: 'counted',
            byWindowEnd: outcome.contaminatedByWindowEnd,
            atAnyTime: outcome.contaminatedAtAnyTime,
          });
        } else {
          expect(pooled).toEqual({ kind: 'left-out', reason: outcome.kind });
        }
      }),
    );
  });
});
