import type { RecordTableLayout } from '@/lib/growing/record-table-layout';
import { dateInOrder, dateParts } from '../conditions/read-moment';
import { readDate } from './read-date';

/** A date that reads as another day in another order, as it came and as it is read (YYYY-MM-DD). */
export type DoubtfulDate = { readonly cell: string; readonly date: string };

/** The first date of some rows that could be another day; undefined where every date says itself which day it is. */
export function doubtfulDate(
  rows: readonly { readonly cells: readonly string[] }[],
  { columns, dateOrder }: Pick<RecordTableLayout, 'columns' | 'dateOrder'>,
): DoubtfulDate | undefined {
  return rows
    .flatMap(({ cells }) => cells.filter((_, index) => columns[index]?.field))
    .flatMap((cell) => {
      const found = dateParts(cell);
      const date = readDate(cell, dateOrder);
      if (!found || date === undefined) return [];
      const orders = (['ymd', 'dmy', 'mdy'] as const).flatMap(
        (order) => dateInOrder(found.parts, order) ?? [],
      );
      return new Set(orders).size > 1 ? [{ cell, date }] : [];
    })[0];
}
