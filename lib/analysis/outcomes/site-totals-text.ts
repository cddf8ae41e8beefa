import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, type Sql, sql } from '@/lib/database/sql-text';
import { boundsOf } from '../comparison/read-batch-rows';
import type { OutcomesWanted } from './outcomes-wanted';
import type { SumsOfYears } from './remembered-years';
import type { SplitPeriod } from './split-period';

export type SiteTotalsAsked = {
  readonly wanted: OutcomesWanted;
  readonly period: SplitPeriod;
  /** Sums are read of sites written since; null: of all. */
  readonly since: bigint | null;
  /**
   * Whole years are told one by one: all sites of those that are not held, of the others those written since. Undefined: they
   * are added up with the rest.
   */
  readonly heldYears: SumsOfYears | undefined;
};

/**
 * The rows of kept totals that a question adds up, with the year of those that are told year by year (null: told together).
 * Of one material there are none: totals do not tell materials apart.
 */
export function siteTotalsText(
  { actor }: ReadContext,
  { wanted, period, since, heldYears }: SiteTotalsAsked,
  spans: Sql,
): Sql {
  const { species, container, material } = boundsOf(wanted);
  const rows = (
    year: Sql,
    which: Sql,
  ) => sql`select site_id, method_key, ${year} as year, batches, contamination_batches,
      contamination_units, contaminated, contaminated_later, lost_clean, yield_batches, yield_units, fresh, yield_over, fresh_later,
      cropped_batches, cropped_units, cropped_over, cropped_later, open_units, open_unit_days, cropped_open_units,
      cropped_open_unit_days, life_batches, life_units, life_fresh, life_dry
    from outcome_site_total where ${which} and ${material}::text is null and network_id = ${actor.networkId}::uuid
      and container = ${container} and (${species}::uuid is null or species_id = ${species}::uuid)`;
  const written = sql`(${since}::bigint is null or site_id = any ((select sites from written)::uuid[]))`;
  if (heldYears === undefined) return rows(sql`null::date`, sql`${spans} and ${written}`);
  const missing = period.years.filter((year) => !heldYears.has(year));
  const ofYears = (years: readonly string[]) =>
    sql`span = 'year' and starts_on = any (${[...years]}::date[])`;
  // Each part goes by an index of its own.
  const parts = [
    ...(missing.length === 0 ? [] : [rows(sql`starts_on`, ofYears(missing))]),
    ...(heldYears.size === 0
      ? []
      : [
          rows(
            sql`starts_on`,
            sql`${ofYears([...heldYears.keys()])} and site_id = any ((select sites from written_years)::uuid[])`,
          ),
        ]),
    rows(
      sql`null::date`,
      sql`span = 'quarter' and starts_on = any (${[...period.quarters]}::date[]) and ${written}`,
    ),
  ];
  return joinSql(parts, ' union all ');
}
