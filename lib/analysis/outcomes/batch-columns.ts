import { type Sql, sql } from '@/lib/database/sql-text';

/** Of each row of `app.outcome_row` the marks of near batches (flags from 8 on, see `near-codes`), as the text of an array. */
export const markColumn = sql`array_agg(8 * apart::int + 16 * run_missing::int + 32 * any_trimmed::int + 64 * any_as_picked::int
    + 128 * dry_assumed::int + 256 * any_shared::int)::text`;

/** The days since 1970 on which each enters contamination and yield; 0: none. */
export const enteringColumns = sql`array_agg(coalesce(contamination_enters_on - date '1970-01-01', 0))::text,
    array_agg(coalesce(yield_enters_on - date '1970-01-01', 0))::text`;

const ofContamination = sql`filter (where contamination_class = 'counted')`;
const ofYield = sql`filter (where yield_class = 'counted')`;

/**
 * The numbers of near batches, units first; null for those that say nothing of a class or kind of container: what would be
 * a list of noughts takes as long to write as a list of amounts.
 */
export function amountColumns(container: string): Sql {
  const ofLogs =
    container === 'log'
      ? sql`(array_agg(open_units) ${ofYield})::text, (array_agg(open_unit_days) ${ofYield})::text,
        array_agg(life_fresh)::text, array_agg(coalesce(life_dry, 0))::text`
      : sql`null, null, null, null`;
  return sql`array_agg(units)::text, (array_agg(contaminated) ${ofContamination})::text,
    (array_agg(contaminated_later) ${ofContamination})::text, (array_agg(lost_clean) ${ofContamination})::text,
    (array_agg(fresh) ${ofYield})::text, (array_agg(coalesce(yield_over, 0)) ${ofYield})::text, (array_agg(fresh_later) ${ofYield})::text, ${ofLogs}`;
}
