import { lotCursor } from '../fields/lot-filter.input';
import { asCalendarDate, asDate } from '../fields/stored-date';

export type Place = { readonly inoculatedOn: Date; readonly id: string };

/** The place of a row in the list, as the address writes it. */
export function writePlace({ inoculatedOn, id }: Place): string {
  return `${asCalendarDate(inoculatedOn)}_${id}`;
}

/** Reads a place back; undefined for anything else. */
export function readPlace(text: string | null): Place | undefined {
  const place = lotCursor(text);
  return place && { inoculatedOn: asDate(place.date), id: place.id };
}
