import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { TreatedIn } from '../comparison/cluster-of-run';
import { boundsOf } from '../comparison/read-batch-rows';
import { amountColumns, enteringColumns, markColumn } from './batch-columns';
import { keysOf, numbersOf } from './column-text';
import type { NearOf } from './near-codes';
import type { OutcomesWanted } from './outcomes-wanted';

/**
 * Batches of some sites alike in all that decides where they count. Of each the site, the runs, and by place: flags from 8
 * on (see `near-codes`), days since 1970 on which it enters contamination and yield, then the numbers of near batches.
 */
export type SiteBatches = {
  readonly of: NearOf;
  readonly sites: readonly string[];
  readonly runs: readonly (readonly string[])[];
  readonly numbers: readonly (readonly number[])[];
};

type Column = string | null;
type Columns = readonly [...of: NearOf, sites: Column, runs: Column, ...numbers: Column[]];

/**
 * Every batch of these sites within the filter, of any method, as columns: a tenth of the time of as many records. Classes
 * are kept with every write; whose day has come is said by the days.
 */
export async function readSiteBatches(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
  sites: readonly string[],
): Promise<readonly SiteBatches[]> {
  const { from, to, species, container, material } = boundsOf(wanted);
  // Row policies let the database think that there are few batches: it would sort them by texts instead of hashing a few classes.
  await db.$queryRaw`select set_config('enable_sort', 'off', true)`;
  const [answer] = await db.$queryRaw<{ classes: string | null }[]>`
    select json_agg(class)::text as classes from (
      select json_build_array(method_key, material_key, contamination_class, yield_class, cropped, life_class,
        array_agg(site_id)::text, string_agg(run_ids::text, ';'),
        ${markColumn}, ${enteringColumns}, ${amountColumns(wanted.container)}) as class
      from app.outcome_row
      where network_id = ${actor.networkId}::uuid and site_id = any (${[...sites]}::uuid[]) and container = ${container}
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
      group by method_key, material_key, contamination_class, yield_class, cropped, life_class) classes`;
  await db.$queryRaw`select set_config('enable_sort', 'on', true)`;
  // The shape is the statement's own.
  return (JSON.parse(answer?.classes ?? '[]') as Columns[]).map((columns) => {
    const [method, material_, contamination, given, cropped, life, ofSites, runs, ...numbers] = columns;
    return {
      of: [method, material_, contamination, given, cropped, life],
      sites: keysOf(ofSites),
      runs: (runs ?? '').split(';').map((ids) => (ids === '{}' ? [] : keysOf(ids))),
      numbers: numbers.map(numbersOf),
    };
  });
}

/** Those of them that were treated in several runs. */
export function joiningOf(batches: readonly SiteBatches[]): TreatedIn[] {
  return batches.flatMap(({ runs }) => runs.flatMap((runIds) => (runIds.length > 1 ? [{ runIds }] : [])));
}
