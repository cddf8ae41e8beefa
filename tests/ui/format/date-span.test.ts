import { describe, expect, test } from 'vitest';
import { dateSpan } from '@/lib/ui/format/date-span';

const plain = (text: string) => text.replace(/\u00a0/g, ' ');
const spanOf = (from: string, to: string, today?: string) => {
  const span = dateSpan(from, to, 'en-US', today);
  return [plain(span.from), plain(span.to), span.days];
};

describe('a span of dates', () => {
  test('leaves the years out where both ends lie in this year', () =>
    expect(spanOf('2026-05-19', '2026-05-24', '2026-05-20')).toEqual(['19 May', '24 May', 'several']));

  test('names both years as soon as one end lies in another', () => {
    expect(spanOf('2026-10-27', '2027-10-22', '2026-11-27')).toEqual([
      '27 Oct 2026',
      '22 Oct 2027',
      'several',
    ]);
    expect(spanOf('2027-02-01', '2027-03-01', '2026-11-27')).toEqual(['1 Feb 2027', '1 Mar 2027', 'several']);
  });

  test('names both years where nobody says what year it is', () =>
    expect(spanOf('2026-05-19', '2026-05-24')).toEqual(['19 May 2026', '24 May 2026', 'several']));

  test('knows that it is one day', () =>
    expect(spanOf('2026-11-30', '2026-11-30', '2026-11-27')[2]).toBe('one'));
});
