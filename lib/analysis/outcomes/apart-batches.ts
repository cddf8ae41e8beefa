import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, type Sql, sql } from '@/lib/database/sql-text';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { boundsOf } from '../comparison/read-batch-rows';
import { epochDay } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';

/**
 * Batches of a site, method, species and material whose runs reach over several sums. Of each the number of a run, its days
 * since 1970 (inoculated, entering contamination, entering yield), and for what it counts as if those had come: 1
 * contamination, 2 yield, 4 cropped, 8 log life.
 */
export type ApartBatches = {
  readonly methodKey: string;
  readonly species: string;
  readonly material: string;
  /** Five numbers a batch, in the order of inoculation: run, flags, and the three days. */
  readonly numbers: readonly number[];
  /** Those of several runs, once more. */
  readonly joining: readonly JoiningBatch[];
};

type JoiningBatch = {
  readonly inoculated: number;
  readonly runIds: readonly string[];
  readonly runs: readonly number[];
};

/** Those of one question that count on a day, of a site and method. */
export type ApartCell = {
  readonly methodKey: string;
  readonly runs: number[];
  readonly flags: number[];
  readonly joining: { readonly runIds: readonly string[]; readonly runs: readonly number[] }[];
};

const perBatch = 5;

/** Which batches are read. */
export type ApartRead = {
  readonly container: string;
  readonly from: CalendarDate;
  /** Those that are held already are read again at the sites of a statement of one array only. */
  readonly held: { readonly from: CalendarDate; readonly written: Sql } | undefined;
};

/**
 * One text: a line a site, method, species and material, with `{run,run}flags,day,day,day` one after another, which the
 * database writes several times faster than JSON. Answered from an index alone.
 */
export function apartText({ actor }: ReadContext, { container, from, held }: ApartRead): Sql {
  const all = sql`select site_id, method_key, species_id, material_key, run_ids, container, inoculated_on, contamination_class,
      contamination_enters_on, yield_class, yield_enters_on, life_class, fresh_grams, fresh_grams_by_yield_day
    from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container} and apart and inoculated_on >= ${from}::date`;
  // Each part goes by an index of its own.
  const earlier = (day: CalendarDate) => (from < day ? [sql`${all} and inoculated_on < ${day}::date`] : []);
  const parts =
    held === undefined
      ? [all]
      : [
          ...earlier(held.from),
          sql`${all} and inoculated_on >= ${held.from}::date and site_id = any (${held.written})`,
        ];
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
    const own = { methodKey, species, material, joining, numbers: read.flat() };
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

/** The batches within a question, site by site, with what each counts for on a day since 1970. */
export function apartWithin(
  wanted: OutcomesWanted,
): (apart: readonly ApartBatches[], today: number) => readonly ApartCell[] {
  const { from, to, species, material } = boundsOf(wanted);
  const [first, last] = [epochDay(from), epochDay(to)];
  return (apart, today) => {
    const cells = new Map<string, ApartCell>();
    for (const own of apart) {
      if (species !== null && own.species !== species) continue;
      if (material !== null && own.material !== material) continue;
      const cell = cells.get(own.methodKey) ?? {
        methodKey: own.methodKey,
        runs: [],
        flags: [],
        joining: [],
      };
      cells.set(own.methodKey, cell);
      addWithin(cell, own, { first, last, today });
    }
    return [...cells.values()];
  };
}

type Days = { readonly first: number; readonly last: number; readonly today: number };

function addWithin(cell: ApartCell, { numbers, joining }: ApartBatches, { first, last, today }: Days): void {
  for (
    let at = placeOf(numbers, first);
    at < numbers.length && (numbers[at + 2] ?? 0) <= last;
    at += perBatch
  ) {
    const come =
      ((numbers[at + 3] ?? 0) <= today ? 1 : 0) | ((numbers[at + 4] ?? 0) <= today ? 2 + 4 : 0) | 8;
    cell.runs.push(numbers[at] ?? 0);
    cell.flags.push((numbers[at + 1] ?? 0) & come);
  }
  for (const batch of joining)
    if (batch.inoculated >= first && batch.inoculated <= last) cell.joining.push(batch);
}

/** Where the numbers of the first batch inoculated on a day or later begin. */
function placeOf(numbers: readonly number[], day: number): number {
  let [low, high] = [0, numbers.length / perBatch];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[perBatch * middle + 2] ?? 0) < day) low = middle + 1;
    else high = middle;
  }
  return perBatch * low;
}
