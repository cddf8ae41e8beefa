import { z } from 'zod';
import { type Address, givenOnce } from '@/lib/base/given-once';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { askedDay } from './asked-day';

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
const asked = z.object({
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

export type AskedComparison = z.output<typeof asked> & {
  readonly from?: CalendarDate | undefined;
  readonly to?: CalendarDate | undefined;
};

/**
 * What an address asks for; anything unreadable counts as not asked, so that an old link still opens. Of days the page
 * says so (`dayProblems`), since figures of other days look like those that were asked for.
 */
export function parseComparisonQuery(query: Address): AskedComparison {
  return {
    ...asked.parse(givenOnce(query)),
    from: askedDay(query, 'from').date,
    to: askedDay(query, 'to').date,
  };
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
