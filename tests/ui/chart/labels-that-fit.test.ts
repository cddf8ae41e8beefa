import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labelsThatFit } from '@/lib/ui/chart/labels-that-fit';

const at = (key: string, xPercent: number, y: number) => ({ key, xPercent, y, text: key });

describe('the words of a plot', () => {
  test('all stand where there is room', () => {
    const labels = [at('MILL', 10, 20), at('ROOK', 10, 60), at('TARN', 90, 20)];
    expect([...labelsThatFit(labels, [], 285)]).toEqual(['MILL', 'ROOK', 'TARN']);
  });

  test('leave out one that would lie over another; the first named stays', () => {
    const close = [at('LIND', 60, 47), at('TARN', 74, 52)];
    expect([...labelsThatFit(close, [], 285)]).toEqual(['LIND']);
    expect([...labelsThatFit([...close].reverse(), [], 285)]).toEqual(['TARN']);
    expect([...labelsThatFit([at('LIND', 30, 47), at('TARN', 90, 52)], [], 700)]).toEqual(['LIND', 'TARN']);
  });

  test('do not lie over the mark of another', () => {
    const marks = [at('MILL', 10, 20), at('ROOK', 16, 24)];
    expect([...labelsThatFit([at('MILL', 10, 20)], marks, 285)]).toEqual([]);
    expect([...labelsThatFit([at('MILL', 10, 20)], [at('MILL', 10, 20), at('ROOK', 16, 60)], 285)]).toEqual([
      'MILL',
    ]);
  });

  test('always hold the one named first', () => {
    const label = fc.record({
      xPercent: fc.integer({ min: 0, max: 100 }),
      y: fc.integer({ min: 0, max: 260 }),
    });
    fc.assert(
      fc.property(fc.array(label, { minLength: 1, maxLength: 20 }), (places) => {
        const labels = places.map((place, index) => ({ ...place, key: String(index), text: 'ABCDE' }));
        expect(labelsThatFit(labels, [], 285).has('0')).toBe(true);
      }),
    );
  });
});
