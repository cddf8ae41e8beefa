import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, type Sql, sql } from '@/lib/database/sql-text';
import type { Stretch } from './years-held';

/**
 * Batches of a site, method, species and material whose runs reach over several sums. Of each the number of a run, its days
 * since 1970 (inoculated, entering contamination, entering yield), and for what it counts as if those had come: 1
 * contamination, 2 yield, 4 cropped, 8 log life.
 */
export type ApartBatches = {
  readonly methodKey: string;
  readonly species: string;
  readonly material: string;
  /** Five numbers a batch (`perBatch`), in the order of inoculation: run, flags, and the three days. */
  readonly numbers: Int32Array;
  /** Those of several runs, once more. */
  readonly joining: readonly JoiningBatch[];
};

type JoiningBatch = {
  readonly inoculated: number;
  readonly runIds: readonly string[];
  readonly runs: readonly number[];
};

export const perBatch = 5;

/** Which batches are read. */
export type ApartRead = {
  readonly container: string;
  /** All that were inoculated in these. */
  readonly missing: readonly Stretch[];
  /** Those that are held already are read again at the sites of a statement of one array only. */
  readonly held: { readonly stretches: readonly Stretch[]; readonly written: Sql } | undefined;
};

/**
 * One text: a line a site, method, species and material, with `{run,run}flags,day,day,day` one after another, which the
 * database writes several times faster than JSON. Answered from an index alone.
 */
export function apartText({ actor }: ReadContext, { container, missing, held }: ApartRead): Sql {
  const within = ([
    from,
    to,
  ]: Stretch) => sql`select site_id, method_key, species_id, material_key, run_ids, container, inoculated_on,
      contamination_class, contamination_enters_on, yield_class, yield_enters_on, life_class, fresh_grams, fresh_grams_by_yield_day
    from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container} and apart
      and inoculated_on between ${from}::date and ${to}::date`;
  // Each part goes by an index of its own.
  const again = held?.stretches.map((stretch) => sql`${within(stretch)} and site_id = any (${held.written})`);
  const parts = [...missing.map(within), ...(again ?? [])];
  if (parts.length === 0) return sql`null`;
  return sql`(select string_agg(line, E'\n') from (
    select site_id::text || ' ' || method_key || ' ' || species_id::text || ' ' || material_key || ' ' || string_agg(
      run_ids::text || ((contamination_class = 'counted')::int + 2 * (yield_class = 'counted')::int
        + 4 * (yield_class = 'counted' and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
        + 8 * coalesce(life_class = 'counted', false)::int)::text || ',' || (inoculated_on - date '1970-01-01')::text
        || ',' || coalesce(contamination_enters_on - date '1970-01-01', 0)::text
        || ',' || coalesce(yield_enters_on - date '1970-01-01', 0)::text, ' ') as line
    from (${joinSql(parts, ' union all ')}) apart_batches
    group by site_id, method_key, species_id, material_key) apart_lines)`;
}

function numberOf(run: string, numbers: Map<string, number>): number {
  const known = numbers.get(run);
  if (known !== undefined) return known;
  numbers.set(run, numbers.size);
  return numbers.size - 1;
}

/** What the text says, by site; runs that were never seen get the next numbers. */
export function apartOfSites(text: string | null, numbers: Map<string, number>): Map<string, ApartBatches[]> {
  const sites = new Map<string, ApartBatches[]>();
  for (const line of text ? text.split('\n') : []) {
    const [site = '', methodKey = '', species = '', material = '', ...batches] = line.split(' ');
    const joining: JoiningBatch[] = [];
    const read = batches.map((batch) => readBatch(batch, joining, numbers));
    read.sort((one, other) => (one[2] ?? 0) - (other[2] ?? 0));
    const own = { methodKey, species, material, joining, numbers: Int32Array.from(read.flat()) };
    const known = sites.get(site);
    if (known === undefined) sites.set(site, [own]);
    else known.push(own);
  }
  return sites;
}

function readBatch(batch: string, joining: JoiningBatch[], numbers: Map<string, number>): number[] {
  const end = batch.indexOf('}');
  const ids = batch.slice(1, end);
  const [flags = 0, inoculated = 0, contamination = 0, given = 0] = batch
    .slice(end + 1)
    .split(',')
    .map(Number);
  const several = ids.includes(',');
  const runIds = several ? ids.split(',') : [ids];
  const runs = runIds.map((run) => numberOf(run, numbers));
  if (several) joining.push({ inoculated, runIds, runs });
  return [runs[0] ?? 0, flags, inoculated, contamination, given];
}
