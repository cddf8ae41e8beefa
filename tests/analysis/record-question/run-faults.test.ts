import { describe, expect, it } from 'vitest';
import { type RunOfSite, runFaults } from '@/lib/analysis/record-question/run-faults';
import { judgeRun } from '@/lib/growing/judge-run';
import { windowOfMethod } from '@/lib/growing/window-of-method';

const set = { minCelsius: null, maxCelsius: null, minPh: null, minMinutes: null, maxMinutes: null };
const window = windowOfMethod({ kind: 'hot_water_bath', ...set });

function runOf(
  other: Partial<RunOfSite>,
  endedAt: Date | null = new Date('2026-03-01T14:00:00Z'),
): RunOfSite {
  const times = { startedAt: new Date('2026-03-01T10:00:00Z'), endedAt, loadCelsiusAtSpawning: null };
  return {
    ...{ id: 'run', code: 'T-1', siteId: 'site', startedOn: '2026-03-01', today: '2026-03-02', window },
    endedOn: endedAt === null ? null : '2026-03-01',
    judgement: judgeRun(times, [], window, new Date('2026-03-02T10:00:00Z')),
    firstFilledOn: '2026-03-01',
    ...other,
  };
}
const kindsOf = (run: RunOfSite) => runFaults(run).map(({ kind, on }) => `${kind} ${on}`);

describe('what is missing of a treatment', () => {
  it('are the readings of one that ended without any', () => {
    expect(kindsOf(runOf({}))).toEqual(['run-no-readings 2026-03-01']);
  });

  it('are no readings where the method has nothing to check', () => {
    expect(kindsOf(runOf({ window: null, judgement: { kind: 'none' } }))).toEqual([]);
  });

  it('is the end, once a batch was filled from it or days have passed', () => {
    expect(kindsOf(runOf({}, null))).toEqual(['run-no-end 2026-03-01']);
    expect(kindsOf(runOf({ firstFilledOn: null }, null))).toEqual([]);
    expect(kindsOf(runOf({ firstFilledOn: null, today: '2026-03-05' }, null))).toEqual([
      'run-no-end 2026-03-01',
    ]);
  });

  it('is hard to believe when a batch was filled before it ended', () => {
    expect(kindsOf(runOf({ firstFilledOn: '2026-02-27' }))).toContain('run-after-filling 2026-02-27');
  });
});
