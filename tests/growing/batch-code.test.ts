import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawBatchCode, parseBatchCode } from '@/lib/growing/batch-code';

/** A source of whole numbers that repeats a list. */
function from(numbers: readonly number[]) {
  let at = 0;
  return (below: number) => (numbers[at++ % numbers.length] ?? 0) % below;
}

describe('batch codes', () => {
  it('has a form that can be read aloud', () => {
    expect(drawBatchCode(from([5, 8, 7, 2]), 1)).toBe('KTR-7');
  });

  it('never holds a letter or digit that looks like another', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1 }), fc.integer({ min: 1, max: 6 }), (numbers, digits) => {
        const code = drawBatchCode(from(numbers), digits);
        expect(code).toMatch(/^[A-Z]{3}-\d+$/);
        expect(code).not.toMatch(/[0OQD1ILJ2Z5S8BUVWYMNG69]/);
        expect(code).toHaveLength(4 + digits);
      }),
    );
  });

  it('is read back however it is typed', () => {
    for (const text of ['KTR-7', 'ktr7', ' k t r 7 ', 'Ktr – 7', '#KTR.7', 'ｋｔｒ７']) {
      expect(parseBatchCode(text), text).toBe('KTR-7');
    }
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1 }), (numbers) => {
        const code = drawBatchCode(from(numbers));
        expect(parseBatchCode(code.toLowerCase().replace('-', ' '))).toBe(code);
      }),
    );
  });

  it('does not guess: what is no code is no code', () => {
    for (const text of [
      '',
      'KTR',
      '7',
      'K0R-7',
      'KTR-8',
      'KTR-7-',
      'KTRR-7',
      'KTR-3333333',
      '🍄',
      'x'.repeat(1e6),
    ]) {
      const expected = text === 'KTR-7-' ? 'KTR-7' : null;
      expect(parseBatchCode(text), text.slice(0, 20)).toBe(expected);
    }
  });

  it('refuses a number of digits it does not have', () => {
    expect(() => drawBatchCode(from([0]), 0)).toThrow(RangeError);
    expect(() => drawBatchCode(from([0]), 7)).toThrow(RangeError);
  });
});
