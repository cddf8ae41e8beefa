import { describe, expect, test } from 'vitest';
import { courseScale } from '@/lib/ui/chart/course-scale';

const from = new Date('2026-04-01T08:00:00Z');
const to = new Date('2026-04-01T10:00:00Z');

describe('the scale of a course', () => {
  test('spreads its time over the whole width and its values over the height, high ones above', () => {
    const { x, y, ticks } = courseScale({ from, to }, [20, 72], 190);
    expect(x(from)).toBe(0);
    expect(x(to)).toBe(100);
    expect(x(new Date('2026-04-01T09:00:00Z'))).toBe(50);
    expect(y(72)).toBeLessThan(y(20));
    expect(y(20)).toBeLessThanOrEqual(186);
    expect(y(72)).toBeGreaterThanOrEqual(14);
    expect(ticks.length).toBeLessThanOrEqual(6);
  });

  test('of one value, or of one instant, still has a width', () => {
    const { x, y } = courseScale({ from, to: from }, [12.4], 190);
    expect(x(from)).toBe(0);
    expect(Number.isFinite(y(12.4))).toBe(true);
  });
});
