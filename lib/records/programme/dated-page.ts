import 'server-only';
import { lotCursor } from '../fields/lot-filter.input';
import { asCalendarDate, asDate } from '../fields/stored-date';
import { type ProgrammeFilter, programmeRowsPerPage } from './programme-filter.input';

type DateColumn = 'heldOn' | 'soldOn' | 'since';

/** What a page of a list by date asks for: site, days and where the page before ended. */
export function datedWhere(filter: ProgrammeFilter, column: DateColumn) {
  const after = lotCursor(filter.after);
  return {
    voidedAt: null,
    ...(filter.site === null ? {} : { siteId: filter.site }),
    [column]: {
      ...(filter.from === null ? {} : { gte: asDate(filter.from) }),
      ...(filter.to === null ? {} : { lte: asDate(filter.to) }),
    },
    ...(after === undefined
      ? {}
      : {
          OR: [
            { [column]: { lt: asDate(after.date) } },
            { [column]: asDate(after.date), id: { lt: after.id } },
          ],
        }),
  };
}

type Dated = { readonly id: string; readonly on: Date };

/** The rows of one page out of one more than fit, and the address of the next. */
export function pageOf<Row>(rows: readonly Row[], dated: (row: Row) => Dated) {
  const shown = rows.slice(0, programmeRowsPerPage);
  const last = shown.at(-1);
  const next =
    rows.length > programmeRowsPerPage && last
      ? `${asCalendarDate(dated(last).on)}_${dated(last).id}`
      : undefined;
  return { rows: shown, next };
}
