import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparePrintedBe } from '@/lib/growing/compare-printed-be';

describe('a printed BE beside the one its masses give', () => {
  it.each([
    ['ARGAW23 flush 1, 166 of 1000 g', '16.6', 16.6],
    ['NASIR, 444 of 500 g', '88.8', 88.8],
    ['AKHTAR, 260 of 500 g', '52', 52],
    ['SIF23 wood flakes and bagasse, 13.54 of 1000 g', '1.35', 1.354],
    ['HERICIUM25 formula 3, 193.79 of 275 g', '70.47', (100 * 193.79) / 275],
    ['ATILA16 formaldehyde, 271.28 g of 295 g', '91.96', (100 * 271.28) / 295],
  ])('agrees within half of its last digit: %s', (_row, printed, bePercent) => {
    expect(comparePrintedBe(printed, bePercent)).toBe('agrees');
  });

  it('is truncated when the digits behind were cut off: ARGAW23 flush 3 prints 4.96 for 4.966', () => {
    expect(comparePrintedBe('4.96', 4.966)).toBe('truncated');
    expect(comparePrintedBe('4.97', 4.966)).toBe('agrees');
    expect(comparePrintedBe('52', 52.9)).toBe('truncated');
  });

  it('differs when neither rounding nor cutting explains it: SIF23 prints 39.40 for 39.97', () => {
    expect(comparePrintedBe('39.40', 39.97)).toBe('differs');
    expect(comparePrintedBe('39.98', 39.97)).toBe('differs');
    expect(comparePrintedBe('4.96', 4.97)).toBe('differs');
    expect(comparePrintedBe('4.96', Number.NaN)).toBe('differs');
  });

  it('counts the zeros at the end as printed: 39.40 is finer than 39.4', () => {
    expect(comparePrintedBe('39.4', 39.44)).toBe('agrees');
    expect(comparePrintedBe('39.40', 39.44)).toBe('differs');
  });

  it('takes an exact half either way', () => {
    expect(comparePrintedBe('0.28', 0.285)).toBe('agrees');
    expect(comparePrintedBe('0.29', 0.285)).toBe('agrees');
  });

  it('reads a decimal comma and a percent sign, and says what it cannot read', () => {
    expect(comparePrintedBe(' 88,8 % ', 88.8)).toBe('agrees');
    for (const text of ['', '-', 'n.d.', '-4.96', '1.2.3', '105.0 ± 27.2', '1e2'])
      expect(comparePrintedBe(text, 4.96)).toBe('unreadable');
  });

  it('agrees with every BE that was rounded, and finds every one that was cut off by more than half', () => {
    const fresh = fc.integer({ min: 1, max: 200_000 });
    fc.assert(
      fc.property(fresh, fc.integer({ min: 1000, max: 100_000 }), (freshGrams, dryGrams) => {
        const hundredths = (10_000 * freshGrams) / dryGrams;
        const print = (whole: number) => (whole / 100).toFixed(2);
        expect(comparePrintedBe(print(Math.round(hundredths)), hundredths / 100)).toBe('agrees');
        const cut = comparePrintedBe(print(Math.floor(hundredths)), hundredths / 100);
        expect(cut).toBe(hundredths - Math.floor(hundredths) > 0.5 ? 'truncated' : 'agrees');
      }),
    );
  });
});
