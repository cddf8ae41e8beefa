import type { UcumUnit } from '@/lib/growing/ucum-codes';

/** What a column of the archive is: in words, its unit, and what a blank in it means (never blank where not said). */
export type ColumnText = { readonly about: string; readonly unit?: UcumUnit; readonly blank?: string };

export type TableTexts = Readonly<Record<string, Readonly<Record<string, ColumnText>>>>;

export const day = 'day of the site’s calendar';
export const notRecorded = 'not recorded';
export const notApplicable = 'does not apply';
export const notYet = 'not yet';
export const none = 'none';

export function text(about: string, blank?: string): ColumnText {
  return { about, ...(blank === undefined ? {} : { blank }) };
}

/** A quantity. */
export function amount(unit: UcumUnit, about: string, blank?: string): ColumnText {
  return { ...text(about, blank), unit };
}
