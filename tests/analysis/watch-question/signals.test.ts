import { describe, expect, it } from 'vitest';
import type { RecordFault } from '@/lib/analysis/record-question/record-fault';
import type { SitePart } from '@/lib/analysis/site-question/sites-answer';
import { fittedSignals } from '@/lib/analysis/watch-question/fitted-signals';
import { recordSignals } from '@/lib/analysis/watch-question/record-signals';
import { latestSignals } from '@/lib/analysis/watch-question/signal';

const fault = (kind: RecordFault['kind'], on: string, siteId = 'mill'): RecordFault => ({
  ...{ kind, on, siteId, of: 'batch', id: `${kind} ${on}`, code: 'MLG-1' },
});

describe('records that went missing', () => {
  it('are one line a site, counted from the day asked', () => {
    const faults = [
      fault('not-inspected', '2026-07-10'),
      fault('quiet', '2026-07-12'),
      fault('yield-high', '2026-07-03'),
      fault('not-inspected', '2026-05-01'),
      fault('assumed-moisture', '2026-07-14'),
      fault('run-no-end', '2026-07-08', 'quarry'),
    ];
    expect(recordSignals(faults, '2026-07-01')).toMatchObject([
      { key: 'records:mill:2026-07-12', since: '2026-07-12', missing: 2, implausible: 1 },
      { key: 'records:quarry:2026-07-08', missing: 1, implausible: 0 },
    ]);
  });

  it('stand since the oldest of them and name each batch once, however new the latest is', () => {
    const own = (kind: RecordFault['kind'], on: string, code: string) => ({ ...fault(kind, on), code });
    const faults = [
      own('not-inspected', '2026-07-27', 'MLG-9'),
      own('not-inspected', '2026-07-15', 'MLG-4'),
      own('quiet', '2026-07-20', 'MLG-4'),
    ];
    expect(recordSignals(faults, '2026-07-01')).toMatchObject([
      { since: '2026-07-27', oldest: '2026-07-15', codes: ['MLG-4', 'MLG-9'] },
    ]);
  });

  it('begin a new line when a further one goes missing, so that an answer does not hide it', () => {
    const before = [fault('quiet', '2026-07-10')];
    const [first] = recordSignals(before, '2026-07-01');
    const [second] = recordSignals([...before, fault('quiet', '2026-07-15')], '2026-07-01');
    expect(second?.key).not.toBe(first?.key);
  });
});

const point = (batchId: string, on: string, signal: 'above' | 'below' | null) => ({
  ...{ batchId, on, signal, events: 1, units: 20, value: 12, low: 2, high: 10 },
});
const siteOf = (points: ReturnType<typeof point>[]) =>
  ({
    siteId: 'mill',
    course: { centrePercent: 5, points, falseAlarmEvery: 400, correlation: 0.1 },
  }) as unknown as SitePart;
const nothing = { losses: [], yields: [], lotLast: {} };

describe('what the fitted answers say', () => {
  const signalsOf = (points: ReturnType<typeof point>[]) =>
    fittedSignals({
      lots: { kind: 'cannot', reason: 'too-few-lots' },
      sites: { sites: [siteOf(points)], funnel: null },
      surprises: nothing,
    });

  it('is a site’s last signal from its first batch on, however many follow', () => {
    const points = [
      point('a', '2026-05-01', 'above'),
      point('b', '2026-05-08', null),
      point('c', '2026-06-01', 'above'),
      point('d', '2026-06-08', 'above'),
    ];
    expect(signalsOf(points)).toMatchObject([
      { kind: 'course', key: 'course:mill:above:c', since: '2026-06-01', side: 'above', usual: 5 },
    ]);
    expect(signalsOf(points.slice(0, 3))[0]?.key).toBe('course:mill:above:c');
  });

  it('is nothing of a site within its limits', () => {
    expect(signalsOf([point('a', '2026-05-01', null)])).toEqual([]);
  });

  it('is each lot that loses more, since its last batch was judged', () => {
    const lot = { observed: 40, expected: 9, units: 200, batches: 9, sites: 4, ratio: 4, low: 2, high: 7 };
    const lots = [
      { ...lot, lotId: 'bad', falseDiscovery: 0.001, verdict: 'loses-more' as const },
      { ...lot, lotId: 'good', falseDiscovery: 0.9, verdict: 'as-expected' as const },
    ];
    const signals = fittedSignals({
      lots: { kind: 'judged', lots, leftOut: 0 },
      sites: { sites: [], funnel: null },
      surprises: { ...nothing, lotLast: { bad: '2026-06-30', good: '2026-06-30' } },
    });
    expect(signals).toMatchObject([{ kind: 'lot', key: 'lot:bad', since: '2026-06-30' }]);
    expect(latestSignals(signals, '2026-07-01')).toEqual([]);
  });
});
