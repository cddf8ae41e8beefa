import { z } from 'zod';
import { type CalendarDate, isCalendarDate } from '@/lib/growing/calendar-date';
import { isoDateOf } from '@/lib/growing/typed-date';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';

/** Species or materials taken together because the reader asked for it. */
export const together = 'all';
/** Batches whose components differ in method (or material): a row of their own. */
export const mixed = 'mixed';
/** Second lives of spent substrate: batches of their own, never among those of their treatment. */
export const secondLife = 'second-life';
/** Batches with no method recorded. */
export const notRecorded = 'none';

/**
 * Which batches are compared: by date of inoculation (both days included), one species unless the reader asks for
 * all, always one container kind, a material or all. `method` and `site` narrow to one row, column or cell.
 */
export type ComparisonFilter = {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Species id or `all`. */
  readonly species: string;
  readonly container: ContainerKind;
  /** Material id, `mixed` or `all`. */
  readonly material: string;
  /** Method id, `mixed` or `none`; undefined for every method. */
  readonly method: string | undefined;
  readonly site: string | undefined;
};

const id = z.uuid().transform((value) => value.toLowerCase());
/** Of the years in which a batch can be dated; the database knows no year 0, and no question reaches before year 1. */
const date = z
  .string()
  .refine((text) => isCalendarDate(text) && text >= '1950-01-01' && text <= '2100-12-31');

/** Date fields of the form post their parts; a link in the address carries one ISO date. */
const asked = z.object({
  from: date.optional().catch(undefined),
  to: date.optional().catch(undefined),
  species: z
    .union([z.literal(together), id])
    .optional()
    .catch(undefined),
  container: z.enum(containerKinds).optional().catch(undefined),
  material: z
    .union([z.literal(together), z.literal(mixed), id])
    .optional()
    .catch(undefined),
  method: z
    .union([z.literal(mixed), z.literal(secondLife), z.literal(notRecorded), id])
    .optional()
    .catch(undefined),
  site: id.optional().catch(undefined),
});

export type AskedComparison = z.output<typeof asked>;

/** A day in the address: one ISO date in a link, or the day, month and year that the form's date field posts. */
function dayOf(query: Readonly<Record<string, string | undefined>>, name: 'from' | 'to'): string | undefined {
  const [day, month, year] = [query[`${name}__day`], query[`${name}__month`], query[`${name}__year`]];
  if (day === undefined || month === undefined || year === undefined) return query[name];
  return isoDateOf(day.trim(), month.trim(), year.trim());
}

/** What an address asks for; anything unreadable counts as not asked, so that an old link still opens. */
export function parseComparisonQuery(query: Record<string, string | string[] | undefined>): AskedComparison {
  const single = Object.entries(query).map(([name, value]) => [
    name,
    Array.isArray(value) ? value[0] : value,
  ]);
  const given: Record<string, string | undefined> = Object.fromEntries(
    single.filter(([, value]) => value !== ''),
  );
  return asked.parse({ ...given, from: dayOf(given, 'from'), to: dayOf(given, 'to') });
}

/** What is shown when the address does not say. */
export type ComparisonDefaults = Pick<ComparisonFilter, 'from' | 'to' | 'species' | 'container'>;

/** The filter in full; a period given the wrong way round is turned about. */
export function completeFilter(query: AskedComparison, defaults: ComparisonDefaults): ComparisonFilter {
  const ends: [CalendarDate, CalendarDate] = [query.from ?? defaults.from, query.to ?? defaults.to];
  const [from, to] = ends.toSorted();
  return {
    from: from ?? defaults.from,
    to: to ?? defaults.to,
    species: query.species ?? defaults.species,
    container: query.container ?? defaults.container,
    material: query.material ?? together,
    method: query.method,
    site: query.site,
  };
}

/** The filter as an address writes it, names in a fixed order, so that equal filters give equal addresses. */
export function queryOfFilter(filter: ComparisonFilter): string {
  const { from, to, species, container, material, method, site } = filter;
  const query = new URLSearchParams({ from, to, species, container, material });
  if (method !== undefined) query.set('method', method);
  if (site !== undefined) query.set('site', site);
  return query.toString();
}
