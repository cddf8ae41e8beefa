import { asCalendarDate, asDate } from '../fields/stored-date';

export type Place = { readonly inoculatedOn: Date; readonly id: string };

const shape = /^(\d{4}-\d{2}-\d{2})_([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})$/;

/** The place of a row in the list, as the address writes it. */
export function writePlace({ inoculatedOn, id }: Place): string {
  return `${asCalendarDate(inoculatedOn)}_${id}`;
}

/** Reads a place back; undefined for anything else. */
export function readPlace(text: string | null): Place | undefined {
  const [, on, id] = shape.exec(text ?? '') ?? [];
  if (on === undefined || id === undefined) return undefined;
  const inoculatedOn = asDate(on);
  return Number.isNaN(inoculatedOn.getTime()) ? undefined : { inoculatedOn, id };
}
