import { expect, test } from 'vitest';
import { roundOn } from '@/lib/growing/trial-round';

const fortnightly = { startsOn: '2026-11-02', daysBetweenBlocks: 14 };

test('rounds follow each other from the first day that was planned', () => {
  const days = [1, 2, 17].map((round) => roundOn({ ...fortnightly, today: '2026-10-20' }, round));
  expect(days).toEqual(['2026-11-02', '2026-11-16', '2027-06-14']);
});

test('a trial that starts later than planned begins on that day', () => {
  expect([1, 2].map((round) => roundOn({ ...fortnightly, today: '2026-11-26' }, round))).toEqual([
    '2026-11-26',
    '2026-12-10',
  ]);
});
