import { describe, expect, it } from 'vitest';
import { currencyDigits, isCurrency, minorText, mostMinor, toMinor } from '@/lib/growing/money';

describe('an amount of money', () => {
  it('becomes whole minor units exactly, where binary fractions would not', () => {
    // 0.1 + 0.2, 1.005 and 8.2 are the usual traps; 19.99 * 100 is 1998.9999999999998.
    expect(toMinor(19.99, 'USD')).toBe(1999);
    expect(toMinor(8.2, 'EUR')).toBe(820);
    expect(toMinor(0.07, 'USD')).toBe(7);
    expect(toMinor(1234567.89, 'USD')).toBe(123456789);
  });

  it('has as many decimals as its currency', () => {
    expect(['USD', 'JPY', 'KWD'].map(currencyDigits)).toEqual([2, 0, 3]);
    expect(toMinor(1.005, 'USD')).toBeNull();
    expect(toMinor(1.005, 'KWD')).toBe(1005);
    expect(toMinor(9.5, 'JPY')).toBeNull();
  });

  it('is refused below zero, without an end or larger than a record keeps', () => {
    expect([-1, Number.NaN, Number.POSITIVE_INFINITY, mostMinor].map((one) => toMinor(one, 'USD'))).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(toMinor(mostMinor, 'JPY')).toBe(mostMinor);
  });

  it('is written with all its decimals and reads back as itself', () => {
    expect([
      minorText(5, 'USD'),
      minorText(1999, 'USD'),
      minorText(7, 'JPY'),
      minorText(-1250, 'USD'),
    ]).toEqual(['0.05', '19.99', '7', '-12.50']);
    for (let minor = 0; minor < 20_000; minor += 7)
      expect(toMinor(Number(minorText(minor, 'USD')), 'USD')).toBe(minor);
  });
});

it('a currency is three capitals that exist', () => {
  expect(['USD', 'MXN', 'usd', 'QQQ', ''].map(isCurrency)).toEqual([true, true, false, false, false]);
});
