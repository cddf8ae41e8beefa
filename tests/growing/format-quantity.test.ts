import { describe, expect, it } from 'vitest';
import { decimalSignOf, formatMass, formatTotalMass, massEcho } from '@/lib/growing/format-quantity';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('written masses', () => {
  it('echoes both units', () => {
    const echo = massEcho(1360, 'kg', 'en-US');
    expect([echo.own, echo.twin].map(plain)).toEqual(['1.36 kg', '3 lb 0 oz']);
    const turned = massEcho(1360, 'lb', 'en-US');
    expect([turned.own, turned.twin].map(plain)).toEqual(['3 lb 0 oz', '1.36 kg']);
  });

  it('follows the number region, not the language', () => {
    expect(plain(formatMass(1234, 'kg', 'es-ES'))).toBe('1,234 kg');
    expect(plain(formatMass(1234, 'kg', 'es-US'))).toBe('1.234 kg');
    expect(plain(formatMass(12_345_678, 'kg', 'en-US'))).toBe('12,345.678 kg');
    expect(plain(formatMass(1250, 'kg', 'ar-EG'))).toMatch(/1.25/);
    expect(decimalSignOf('en-US')).toBe('.');
    expect(decimalSignOf('es-US')).toBe('.');
    expect(decimalSignOf('es-ES')).toBe(',');
  });

  it('writes small masses in the small unit', () => {
    expect(plain(formatMass(260, 'kg', 'en-US'))).toBe('260 g');
    expect(plain(formatMass(0, 'kg', 'en-US'))).toBe('0 g');
    expect(plain(formatMass(227, 'lb', 'en-US'))).toBe('8 oz');
    expect(plain(formatMass(100, 'lb', 'en-US'))).toBe('3.5 oz');
  });

  it('never writes sixteen ounces', () => {
    expect(plain(formatMass(453, 'lb', 'en-US'))).toBe('1 lb 0 oz');
    expect(plain(formatMass(907, 'lb', 'en-US'))).toBe('2 lb 0 oz');
  });

  it('writes totals in one unit', () => {
    expect(plain(formatTotalMass(4_989_516, 'kg', 'en-US'))).toBe('4,989.5 kg');
    expect(plain(formatTotalMass(4_989_516, 'lb', 'en-US'))).toBe('11,000.0 lb');
  });
});
