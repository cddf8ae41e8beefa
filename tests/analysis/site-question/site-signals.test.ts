import { expect, test } from 'vitest';
import { siteSignals } from '@/lib/analysis/site-question/site-signals';
import type { CoursePoint } from '@/lib/analysis/site-question/sites-answer';

const point = (on: string, signal: CoursePoint['signal']): CoursePoint => ({
  ...{ batchId: on, on, events: 1, units: 10, value: 10, low: 0, high: 20, signal },
});
const site = (siteId: string, ...points: CoursePoint[]) => ({
  siteId,
  course: { points, centrePercent: 10, falseAlarmEvery: 200, correlation: 0 },
});

test('a signal is shared with sites that began one of the same side within four weeks', () => {
  const shared = siteSignals([
    site('mill', point('2026-03-01', null), point('2026-04-01', 'above'), point('2026-04-03', 'above')),
    site('quarry', point('2026-04-20', 'above'), point('2026-09-01', null), point('2026-09-10', 'above')),
    site('tarn', point('2026-04-02', 'below')),
    site('ash', point('2026-06-30', 'above')),
    { siteId: 'new', course: null },
  ]);
  expect(shared.get('mill')).toMatchObject([{ on: '2026-04-01', side: 'above', others: 1, of: 3 }]);
  expect(shared.get('quarry')?.map(({ others }) => others)).toEqual([1, 0]);
  expect(shared.get('tarn')).toMatchObject([{ on: '2026-04-02', side: 'below', others: 0, of: 3 }]);
  expect(shared.has('new')).toBe(false);
});

test('it is told as shared where half of five others or more began one, never among fewer', () => {
  const named = (count: number, signalling: number) =>
    Array.from({ length: count }, (_, at) =>
      site(`site ${at}`, point('2026-04-01', at < signalling ? 'above' : null)),
    );
  const sharedOf = (count: number, signalling: number) =>
    siteSignals(named(count, signalling))
      .get('site 0')
      ?.map(({ shared }) => shared);
  expect(sharedOf(6, 4)).toEqual([true]);
  expect(sharedOf(6, 3)).toEqual([false]);
  expect(sharedOf(5, 5)).toEqual([false]);
});
