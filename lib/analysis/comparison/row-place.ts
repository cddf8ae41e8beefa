import { isCalendarDate } from '@/lib/growing/calendar-date';

/** The place of a batch in a list by day of inoculation and id. */
export type RowPlace = { readonly inoculatedOn: string; readonly id: string };

const shape = /^(\d{4}-\d{2}-\d{2})_([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})$/;

export function writeRowPlace({ inoculatedOn, id }: RowPlace): string {
  return `${inoculatedOn}_${id}`;
}

/** Reads a place from an address; undefined for anything else, so that an old link still opens. */
export function readRowPlace(text: string | readonly string[] | undefined): RowPlace | undefined {
  const [, inoculatedOn, id] = shape.exec(typeof text === 'string' ? text : '') ?? [];
  if (inoculatedOn === undefined || id === undefined) return undefined;
  return isCalendarDate(inoculatedOn) && inoculatedOn >= '1950-01-01' ? { inoculatedOn, id } : undefined;
}
