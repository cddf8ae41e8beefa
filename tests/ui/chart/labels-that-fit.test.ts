import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labelsThatFit } from '@/lib/ui/chart/labels-that-fit';

const at = (key: string, xPercent: number, y: number) => ({ key, xPercent, y, text: key });
const phone = { widthPx: 285, heightPx: 260 };
const desk = { widthPx: 700, heightPx: 260 };

describe('the words of a plot', () => {
  test('stand right of their marks, and left of those far to the right, where there is room', () => {
    const labels = [at('MILL', 10, 20), at('ROOK', 10, 60), at('TARN', 90, 20)];
    expect([...labelsThatFit(labels, labels, phone)]).toEqual([
      ['MILL', 'right'],
      ['ROOK', 'right'],
      ['TARN', 'left'],
    ]);
  });

  test('go to another side where one would lie over another; the first named has the first choice', () => {
    const close = [at('LIND', 60, 47), at('TARN', 74, 52)];
    expect([...labelsThatFit(close, close, phone)]).toEqual([
      ['LIND', 'left'],
      ['TARN', 'right'],
    ]);
    expect([...labelsThatFit(close, [], phone)]).toEqual([
      ['LIND', 'right'],
      ['TARN', 'below'],
    ]);
    expect([...labelsThatFit([...close].reverse(), [], phone)]).toEqual([
      ['TARN', 'left'],
      ['LIND', 'above'],
    ]);
    const wide = [at('LIND', 30, 47), at('TARN', 90, 52)];
    expect([...labelsThatFit(wide, wide, desk).keys()]).toEqual(['LIND', 'TARN']);
  });

  test('are left out where every side lies over other marks', () => {
    const around = [
      ...[at('A', 44, 100), at('B', 56, 100), at('C', 50, 84), at('D', 50, 116)],
      ...[at('E', 46, 84), at('F', 54, 84), at('G', 46, 116), at('H', 54, 116)],
    ];
    expect([...labelsThatFit([at('MILL', 50, 100)], around, phone)]).toEqual([]);
    expect([...labelsThatFit([at('MILL', 50, 100)], around.slice(1), phone)]).toEqual([['MILL', 'left']]);
  });

  test('end over or under a mark at the edge where another mark stands left of it', () => {
    const edge = [at('TARN', 97, 100), at('ASHW', 100, 102)];
    const beside = [at('LIND', 81, 92)];
    expect([...labelsThatFit(edge, [...edge, ...beside], phone)]).toEqual([
      ['TARN', 'above-left'],
      ['ASHW', 'below-left'],
    ]);
  });

  test('do not leave the plot', () => {
    const corner = labelsThatFit([at('MILL', 100, 5)], [], { widthPx: 30, heightPx: 40 });
    expect([...corner]).toEqual([]);
    expect([...labelsThatFit([at('MILL', 100, 20)], [], phone)]).toEqual([['MILL', 'left']]);
  });

  test('always hold the one named first, and never two in one place', () => {
    const label = fc.record({
      xPercent: fc.integer({ min: 0, max: 100 }),
      y: fc.integer({ min: 15, max: 245 }),
    });
    fc.assert(
      fc.property(fc.array(label, { minLength: 1, maxLength: 20 }), (places) => {
        const labels = places.map((place, index) => ({ ...place, key: String(index), text: 'ABCDE' }));
        const placed = labelsThatFit(labels, [], phone);
        expect(placed.has('0')).toBe(true);
        const spots = [...placed].map(([key, side]) => {
          const { xPercent, y } = labels[Number(key)] ?? { xPercent: 0, y: 0 };
          return `${xPercent} ${y} ${side}`;
        });
        expect(new Set(spots).size).toBe(spots.length);
      }),
    );
  });
});
