import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, type Sql, sql } from '@/lib/database/sql-text';
import { numbersOf } from './column-text';
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
  /** By their numbers. */
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
 * One text: a JSON list of kinds, each with its batches as texts of arrays, which the database writes several times faster than
 * JSON. Answered from an index alone.
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
  return sql`(select json_agg(kind)::text from (
    select json_build_array(method_key, species_id, material_key, string_agg(site_id::text, ','),
      string_agg(coalesce(array_to_string(run_ids, ','), ''), ';'),
      array_agg(16 * (inoculated_on - date '1970-01-01') + (contamination_class = 'counted')::int + 2 * (yield_class = 'counted')::int
        + 4 * (yield_class = 'counted' and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
        + 8 * coalesce(life_class = 'counted', false)::int)::text,
      array_agg(coalesce(contamination_enters_on - date '1970-01-01', 0))::text,
      array_agg(coalesce(yield_enters_on - date '1970-01-01', 0))::text) as kind
    from (${joinSql(parts, ' union all ')}) apart_batches
    group by method_key, species_id, material_key) apart_kinds)`;
}

/** The columns of a kind: sites, the runs of each batch, days of inoculation with flags in the last four bits, the other days. */
type ApartColumns = readonly [
  methodKey: string,
  species: string,
  material: string,
  sites: string,
  runs: string,
  ...numbers: (string | null)[],
];

/** What the text says, by site; runs and kinds that were never seen get the next numbers. */
export function apartOfSites(text: string | null, names: ApartNames): Map<string, ApartBatches[]> {
  const read = new Map<string, { batches: number[][]; joining: JoiningBatch[] }>();
  // The shape is the statement's own.
  for (const columns of JSON.parse(text ?? '[]') as ApartColumns[]) {
    const [methodKey, species, material, sites, runs, ...rest] = columns;
    const kind = kindNumber({ methodKey, species, material }, names);
    const [days = [], contamination = [], given = []] = rest.map(numbersOf);
    const runsOf = runs.split(';');
    sites.split(',').forEach((site, row) => {
      let own = read.get(site);
      if (own === undefined) {
        own = { batches: [], joining: [] };
        read.set(site, own);
      }
      const [inoculated, flags] = [(days[row] ?? 0) >> 4, (days[row] ?? 0) & 15];
      const run = readRuns(runsOf[row] ?? '', { inoculated, kind }, own.joining, names.runs);
      own.batches.push([run, flags, inoculated, contamination[row] ?? 0, given[row] ?? 0, kind]);
    });
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

/** The number of the first run of a batch; one of several is noted. */
function readRuns(
  ids: string,
  of: Pick<JoiningBatch, 'inoculated' | 'kind'>,
  joining: JoiningBatch[],
  known: Map<string, number>,
): number {
  if (!ids.includes(',')) return runNumber(ids, known);
  const runIds = ids.split(',');
  const runs = runIds.map((run) => runNumber(run, known));
  joining.push({ ...of, runIds, runs });
  return runs[0] ?? 0;
}
