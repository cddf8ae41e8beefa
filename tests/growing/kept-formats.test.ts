import { describe, expect, it } from 'vitest';
import { dateTimeFormat, numberFormat } from '@/lib/growing/kept-formats';

describe('kept formats', () => {
  it('are made once for a locale and its options, and never taken for others', () => {
    const spanish = numberFormat('es-ES', { minimumFractionDigits: 1 });
    expect(numberFormat('es-ES', { minimumFractionDigits: 1 })).toBe(spanish);
    expect(spanish.format(1.5)).toBe('1,5');
    expect(numberFormat('es-US', { minimumFractionDigits: 1 }).format(1.5)).toBe('1.5');
    expect(numberFormat('es-ES', { minimumFractionDigits: 2 }).format(1.5)).toBe('1,50');
    const late = new Date('2026-11-26T23:30:00Z');
    const day = (timeZone: string) => dateTimeFormat('en-GB', { dateStyle: 'short', timeZone }).format(late);
    expect([day('UTC'), day('Asia/Tokyo')]).toEqual(['26/11/2026', '27/11/2026']);
  });

  it('start over rather than grow without end, and refuse an unknown time zone', () => {
    for (let at = 0; at < 800; at += 1)
      numberFormat('en', {
        minimumIntegerDigits: 1 + (at % 20),
        maximumFractionDigits: Math.floor(at / 20) % 20,
        useGrouping: at < 400,
      });
    expect(numberFormat('en', { minimumFractionDigits: 2 }).format(2)).toBe('2.00');
    expect(() => dateTimeFormat('en', { timeZone: 'Nowhere/Land' })).toThrow(RangeError);
  });
});
