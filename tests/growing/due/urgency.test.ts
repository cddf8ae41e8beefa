import { describe, expect, it } from 'vitest';
import type { BatchDue } from '@/lib/growing/due/batch-facts';
import { ownDays } from '@/lib/growing/due/own-days';
import { urgencyOn } from '@/lib/growing/due/urgency';

const pins: BatchDue = { kind: 'pins', from: '2026-04-17', to: '2026-05-03', own: null };
const never = '2026-04-01';

describe('how urgent a line is', () => {
  it('is nothing until a week before, soon within it, today in its days, overdue after', () => {
    expect(urgencyOn(pins, '2026-04-09', never)).toBeNull();
    expect(urgencyOn(pins, '2026-04-10', never)).toBe('soon');
    expect(urgencyOn(pins, '2026-04-17', never)).toBe('today');
    expect(urgencyOn(pins, '2026-05-03', never)).toBe('today');
    expect(urgencyOn(pins, '2026-05-04', never)).toBe('overdue');
  });
  it('rests for the day on which something was written of the batch', () => {
    expect(urgencyOn(pins, '2026-04-18', '2026-04-18')).toBeNull();
    expect(urgencyOn({ ...pins, kind: 'window-look' }, '2026-04-18', '2026-04-18')).toBe('today');
  });
  it('is a season where its days are months', () =>
    expect(urgencyOn({ ...pins, to: '2026-09-01' }, '2026-05-01', never)).toBe('season'));
  it('of a quiet or emptied batch is to tidy up, however long ago', () => {
    expect(urgencyOn({ ...pins, kind: 'quiet' }, '2027-01-01', never)).toBe('idle');
    expect(urgencyOn({ ...pins, kind: 'none-left' }, '2026-04-17', '2026-04-17')).toBe('idle');
  });
  it('of a flush that did not come is let go after two weeks', () => {
    expect(urgencyOn({ ...pins, kind: 'next-flush' }, '2026-05-17', never)).toBe('overdue');
    expect(urgencyOn({ ...pins, kind: 'next-flush' }, '2026-05-18', never)).toBeNull();
  });
});

describe("a site's own days", () => {
  it('are none with fewer than five batches', () => expect(ownDays([21, 22, 23, 24])).toBeNull());
  it('are the fastest, the slowest and the median of the last eight', () => {
    expect(ownDays([24, 21, 26, 22, 23])).toEqual({ from: 21, to: 26, median: 23, batches: 5 });
    expect(ownDays([24, 21, 26, 22, 23, 25, 24, 22, 90])).toEqual({
      from: 21,
      to: 26,
      median: 23.5,
      batches: 8,
    });
  });
});
