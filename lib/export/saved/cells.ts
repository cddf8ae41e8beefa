import type { Language } from '@/lib/database/generated/enums';

/** The calendar date 'YYYY-MM-DD' of a stored date. */
export function dateCell(stored: Date | null): string | null {
  return stored === null ? null : stored.toISOString().slice(0, 10);
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** An instant by the clock on the site's wall, 'YYYY-MM-DD HH:MM'. */
export function momentCell(instant: Date | null, timeZone: string): string | null {
  if (instant === null) return null;
  let format = formats.get(timeZone);
  if (!format) {
    const digits = '2-digit';
    format = new Intl.DateTimeFormat('sv-SE', {
      ...{ timeZone, year: 'numeric', month: digits, day: digits, hour: digits, minute: digits },
    });
    formats.set(timeZone, format);
  }
  return format.format(instant);
}

/** A name in the reader's language. */
export function nameCell(
  named: { nameEn: string; nameEs: string } | null,
  language: Language,
): string | null {
  if (named === null) return null;
  return language === 'es' ? named.nameEs : named.nameEn;
}

/** Codes of several records in one cell. */
export function codesCell(codes: readonly string[]): string | null {
  return codes.length === 0 ? null : [...new Set(codes)].join(', ');
}

/** A decimal of the database as a number. */
export function decimalCell(decimal: { toNumber(): number } | null): number | null {
  return decimal === null ? null : decimal.toNumber();
}
