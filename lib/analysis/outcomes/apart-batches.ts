import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, type Sql, sql } from '@/lib/database/sql-text';
import type { Stretch } from './quarters-held';

/**
 * Batches of a site whose runs reach over several sums. Of each the number of a run, its days since 1970 (inoculated, entering
 * contamination, entering yield), for what it counts as if those had come (1 contamination, 2 yield, 4 cropped, 8 log life),
 * and the number of its kind: its method, species and material.
 */
export type ApartBatches = {
  /** Six numbers a batch (`perBatch`), in the order of inoculation: run, flags, the three days, kind. */
  readonly numbers: Int32Array;
  /** Those of several runs, once more, in no particular order. */
  readonly joining: readonly JoiningBatch[];
};

export type JoiningBatch = {
  readonly inoculated: number;
  readonly kind: number;
  readonly runIds: readonly string[];
  readonly runs: readonly number[];
};

export type ApartKind = { readonly methodKey: string; readonly species: string; readonly material: string };

/** What the numbers of batches stand for; somebody who reads adds to it, and nobody takes anything away. */
export type ApartNames = {
  readonly runs: Map<string, number>;
  /** By their numbers; each by its own line's beginning. */
  readonly kinds: ApartKind[];
  readonly kindOf: Map<string, number>;
};

export function noApartNames(): ApartNames {
  return { runs: new Map(), kinds: [], kindOf: new Map() };
}

export const perBatch = 6;

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

/** What the text says, by site; runs and kinds that were never seen get the next numbers. */
export function apartOfSites(text: string | null, names: ApartNames): Map<string, ApartBatches[]> {
  const read = new Map<string, { batches: number[][]; joining: JoiningBatch[] }>();
  for (const line of text ? text.split('\n') : []) {
    const [site = '', methodKey = '', species = '', material = '', ...batches] = line.split(' ');
    const kind = kindNumber({ methodKey, species, material }, names);
    const own = read.get(site) ?? { batches: [], joining: [] };
    read.set(site, own);
    for (const batch of batches) own.batches.push(readBatch(batch, kind, own.joining, names.runs));
  }
  return new Map(
    [...read].map(([site, { batches, joining }]) => {
      batches.sort((one, other) => (one[2] ?? 0) - (other[2] ?? 0));
      const numbers = new Int32Array(perBatch * batches.length);
      for (let at = 0; at < batches.length; at += 1) numbers.set(batches[at] ?? [], perBatch * at);
      return [site, [{ numbers, joining }]];
    }),
  );
}

function kindNumber(kind: ApartKind, { kinds, kindOf }: ApartNames): number {
  const key = `${kind.methodKey} ${kind.species} ${kind.material}`;
  const known = kindOf.get(key);
  if (known !== undefined) return known;
  kindOf.set(key, kinds.length);
  kinds.push(kind);
  return kinds.length - 1;
}

function runNumber(run: string, runs: Map<string, number>): number {
  const known = runs.get(run);
  if (known !== undefined) return known;
  runs.set(run, runs.size);
  return runs.size - 1;
}

function readBatch(
  batch: string,
  kind: number,
  joining: JoiningBatch[],
  known: Map<string, number>,
): number[] {
  const end = batch.indexOf('}');
  const ids = batch.slice(1, end);
  const [flags = 0, inoculated = 0, contamination = 0, given = 0] = batch
    .slice(end + 1)
    .split(',')
    .map(Number);
  const several = ids.includes(',');
  const runIds = several ? ids.split(',') : [ids];
  const runs = runIds.map((run) => runNumber(run, known));
  if (several) joining.push({ inoculated, kind, runIds, runs });
  return [runs[0] ?? 0, flags, inoculated, contamination, given, kind];
}
