import { describe, expect, it } from 'vitest';
import { classifyYield } from '@/lib/analysis/comparison/classify-yield';
import { bags } from '../bags-of';

const after = '2026-12-31';
const reasonOf = (changes: Parameters<typeof bags>[0], today = after) => {
  const answer = classifyYield(bags(changes), today);
  return answer.kind === 'left-out' ? answer.reason : answer.kind;
};
const unpicked = { freshGramsByYieldDay: 0, weighings: 0 };

describe('which batches enter the pooled yield', () => {
  it('lets a batch enter on its yield day, closed or not, with nothing written', () => {
    expect(reasonOf({}, '2026-06-29')).toBe('window-open');
    expect(reasonOf({}, '2026-06-30')).toBe('counted');
    expect(reasonOf({ closedOn: '2026-06-01' }, '2026-06-29')).toBe('window-open');
    expect(reasonOf({ closedOn: '2026-06-01' }, '2026-06-30')).toBe('counted');
  });

  it('counts harvests up to the yield day and shows later ones apart', () => {
    expect(classifyYield(bags({ freshGramsLater: 900 }), after)).toEqual({
      kind: 'counted',
      freshGrams: 6_000,
      over: 10_000,
      laterGrams: 900,
      cropped: true,
    });
  });

  it('counts a total loss with nothing over its whole dry mass', () => {
    const lost = { ...unpicked, contaminatedAtAnyTime: 18, lostClean: 2 };
    expect(classifyYield(bags(lost), after)).toMatchObject({
      kind: 'counted',
      freshGrams: 0,
      over: 10_000,
      cropped: false,
    });
    expect(reasonOf({ ...lost, lostClean: 1 })).toBe('harvest-unknown');
  });

  it('counts a batch closed as none picked with nothing', () => {
    expect(classifyYield(bags({ ...unpicked, noHarvest: 'none_picked' }), after)).toMatchObject({
      freshGrams: 0,
    });
    expect(classifyYield(bags({ ...unpicked, closedAsLost: true }), after)).toMatchObject({ freshGrams: 0 });
  });

  it('leaves out what was picked but not weighed, and what nobody said anything about', () => {
    expect(reasonOf({ ...unpicked, noHarvest: 'not_weighed' })).toBe('not-weighed');
    expect(reasonOf({ ...unpicked, noHarvest: 'not_weighed', contaminatedAtAnyTime: 20 })).toBe(
      'not-weighed',
    );
    expect(reasonOf(unpicked)).toBe('harvest-unknown');
  });

  it('counts a batch first picked after its yield day as nothing by that day', () => {
    expect(
      classifyYield(bags({ freshGramsByYieldDay: 0, freshGramsLater: 800, weighings: 1 }), after),
    ).toMatchObject({
      freshGrams: 0,
      laterGrams: 800,
      cropped: false,
    });
  });

  it('leaves out batches that are voided, without dry mass or without a yield day', () => {
    expect(reasonOf({ voided: true })).toBe('voided');
    expect(reasonOf({ dryGrams: null })).toBe('no-dry-mass');
    expect(reasonOf({ dryGrams: 0 })).toBe('no-dry-mass');
    expect(reasonOf({ yieldAssessedOn: null })).toBe('no-window');
  });

  it('divides the yield of a bed by its area, never by a dry mass', () => {
    const bed = { containerKind: 'bed', unitCount: 1, bedAreaCm2: 40_000 } as const;
    expect(classifyYield(bags(bed), after)).toMatchObject({ freshGrams: 6_000, over: 40_000 });
    expect(reasonOf({ ...bed, bedAreaCm2: null })).toBe('no-area');
  });

  it('divides the yield of logs by the days of each log, a year at least', () => {
    const logs = { containerKind: 'log', unitCount: 10, freshGramsLater: 500 } as const;
    expect(reasonOf(logs, '2027-03-31')).toBe('window-open');
    expect(classifyYield(bags(logs), '2028-03-31')).toMatchObject({ freshGrams: 6_500, over: 7_300 });
    expect(classifyYield(bags({ ...logs, closedOn: '2026-10-01' }), '2028-03-31')).toMatchObject({
      over: 3_650,
    });
    expect(reasonOf({ ...logs, ...unpicked, freshGramsLater: 0 }, '2028-03-31')).toBe('counted');
    expect(reasonOf({ ...logs, ...unpicked, noHarvest: 'not_weighed' }, '2028-03-31')).toBe('not-weighed');
  });
});
