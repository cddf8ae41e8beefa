import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { Prisma } from '@/lib/database/generated/client';
import { type CalendarDate, daysBetween } from '@/lib/growing/calendar-date';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
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
  /** Five numbers a batch: run, flags, and the three days. */
  readonly numbers: number[];
  /** Those of several runs, once more: the place of the first of its numbers, and all its runs. */
  readonly joining: readonly JoiningBatch[];
};

type JoiningBatch = {
  readonly at: number;
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

const epoch = '1970-01-01';
const perBatch = 5;

/** Which batches are read. */
export type ApartRead = {
  readonly container: string;
  readonly from: CalendarDate;
  /** Those that are held already are read again at the sites of a statement of one array only. */
  readonly held: { readonly from: CalendarDate; readonly written: Prisma.Sql } | undefined;
};

/**
 * One text: a line a site, method, species and material, with `{run,run}flags,day,day,day` one after another, which the
 * database writes several times faster than JSON. Answered from an index alone.
 */
export function apartText({ actor }: ReadContext, { container, from, held }: ApartRead): Prisma.Sql {
  const all = Prisma.sql`select site_id, method_key, species_id, material_key, run_ids, container, inoculated_on, contamination_class,
      contamination_enters_on, yield_class, yield_enters_on, life_class, fresh_grams, fresh_grams_by_yield_day
    from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container} and apart and inoculated_on >= ${from}::date`;
  // Each part goes by an index of its own.
  const earlier = (day: CalendarDate) =>
    from < day ? [Prisma.sql`${all} and inoculated_on < ${day}::date`] : [];
  const parts =
    held === undefined
      ? [all]
      : [
          ...earlier(held.from),
          Prisma.sql`${all} and inoculated_on >= ${held.from}::date and site_id = any (${held.written})`,
        ];
  return Prisma.sql`(select string_agg(line, E'\n') from (
    select site_id::text || ' ' || method_key || ' ' || species_id::text || ' ' || material_key || ' ' || string_agg(
      run_ids::text || ((contamination_class = 'counted')::int + 2 * (yield_class = 'counted')::int
        + 4 * (yield_class = 'counted' and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
        + 8 * coalesce(life_class = 'counted', false)::int)::text || ',' || (inoculated_on - date '1970-01-01')::text
        || ',' || coalesce(contamination_enters_on - date '1970-01-01', 0)::text
        || ',' || coalesce(yield_enters_on - date '1970-01-01', 0)::text, ' ') as line
    from (${Prisma.join(parts, ' union all ')}) apart_batches
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
    const own = { methodKey, species, material, numbers: [] as number[], joining: [] as JoiningBatch[] };
    for (const batch of batches) addBatch(own, batch, numbers);
    const known = sites.get(site);
    if (known === undefined) sites.set(site, [own]);
    else known.push(own);
  }
  return sites;
}

function addBatch(
  own: { numbers: number[]; joining: JoiningBatch[] },
  batch: string,
  numbers: Map<string, number>,
): void {
  const end = batch.indexOf('}');
  const ids = batch.slice(1, end);
  const [flags = '', inoculated = '', contamination = '', given = ''] = batch.slice(end + 1).split(',');
  const at = own.numbers.length;
  const several = ids.includes(',');
  const runIds = several ? ids.split(',') : [ids];
  const runs = runIds.map((run) => numberOf(run, numbers));
  if (several) own.joining.push({ at, runIds, runs });
  own.numbers.push(runs[0] ?? 0, Number(flags), Number(inoculated), Number(contamination), Number(given));
}

/** The batches within a question, by site, with what each counts for today. */
export function apartWithin(
  sites: ReadonlyMap<string, { readonly apart: readonly ApartBatches[] }>,
  wanted: OutcomesWanted,
  today: SiteDates,
): ReadonlyMap<string, readonly ApartCell[]> {
  const { from, to, species, material } = boundsOf(wanted);
  const [first, last] = [daysBetween(epoch, from), daysBetween(epoch, to)];
  const within = new Map<string, readonly ApartCell[]>();
  for (const [site, { apart }] of sites) {
    const date = today.get(site);
    if (apart.length === 0 || date === undefined) continue;
    const day = daysBetween(epoch, date);
    const cells = new Map<string, ApartCell>();
    for (const own of apart) {
      if (species !== null && own.species !== species) continue;
      if (material !== null && own.material !== material) continue;
      const cell = cells.get(own.methodKey) ?? { methodKey: own.methodKey, runs: [], flags: [], joining: [] };
      cells.set(own.methodKey, cell);
      addWithin(cell, own, { first, last, day });
    }
    within.set(site, [...cells.values()]);
  }
  return within;
}

function addWithin(
  cell: ApartCell,
  { numbers, joining }: ApartBatches,
  { first, last, day }: { first: number; last: number; day: number },
): void {
  const isWithin = (at: number) => {
    const inoculated = numbers[at + 2] ?? 0;
    return inoculated >= first && inoculated <= last;
  };
  for (let at = 0; at < numbers.length; at += perBatch) {
    if (!isWithin(at)) continue;
    const flags = numbers[at + 1] ?? 0;
    const come = ((numbers[at + 3] ?? 0) <= day ? 1 : 0) | ((numbers[at + 4] ?? 0) <= day ? 6 : 0) | 8;
    cell.runs.push(numbers[at] ?? 0);
    cell.flags.push(flags & come);
  }
  for (const { at, runIds, runs } of joining) if (isWithin(at)) cell.joining.push({ runIds, runs });
}
