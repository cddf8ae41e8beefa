import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { noSql, type Sql, sql } from '@/lib/database/sql-text';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { amountColumns, enteringColumns, markColumn } from './batch-columns';
import { keysOf, numbersOf } from './column-text';
import { codeOf, type NearOf } from './near-codes';

/** Batches of a site alike in all that decides where they count, which kept sums hold as if their day had come. */
export type YoungClass = {
  readonly species: string;
  readonly of: NearOf;
  /** The code of `of`. */
  readonly code: number;
  /** The cluster of each batch. */
  readonly clusters: string[];
  /**
   * Of each batch: its flags from 8 on (see `near-codes`), its days since 1970 (inoculated, entering contamination,
   * entering yield), then the numbers of near batches.
   */
  readonly numbers: number[][];
};

export type YoungBatches = readonly YoungClass[];

export type YoungRead = {
  readonly container: string;
  /** Those whose day is later than this. */
  readonly day: CalendarDate;
  /** A statement of one array of sites; undefined: of all sites. */
  readonly written: Sql | undefined;
};

type Column = string | null;
type YoungColumns = readonly [
  species: string,
  ...of: NearOf,
  sites: Column,
  clusters: Column,
  ...numbers: Column[],
];

/** One text: a JSON list of classes, each with its batches as texts of arrays. */
export function youngText({ actor }: ReadContext, { container, day, written }: YoungRead): Sql {
  return sql`(select json_agg(class)::text from (
    select json_build_array(species_id, method_key, material_key, contamination_class, yield_class, cropped, life_class,
      array_agg(site_id)::text, array_agg(cluster)::text,
      ${markColumn}, array_agg(inoculated_on - date '1970-01-01')::text, ${enteringColumns}, ${amountColumns(container)}) as class
    from app.outcome_row
    where network_id = ${actor.networkId}::uuid and container = ${container}
      and (contamination_enters_on > ${day}::date or yield_enters_on > ${day}::date)
      ${written === undefined ? noSql : sql`and site_id = any (${written})`}
    group by species_id, method_key, material_key, contamination_class, yield_class, cropped, life_class) young_classes)`;
}

/** What the text says, by site. */
export function youngOfSites(text: string | null): Map<string, YoungClass[]> {
  const sites = new Map<string, YoungClass[]>();
  // The shape is the statement's own.
  for (const columns of JSON.parse(text ?? '[]') as YoungColumns[]) addClass(columns, sites);
  return sites;
}

function addClass(columns: YoungColumns, sites: Map<string, YoungClass[]>): void {
  const [species, method, material, contamination, given, cropped, life, ofSites, ofClusters, ...rest] =
    columns;
  const of: NearOf = [method, material, contamination, given, cropped, life];
  const code = codeOf(of);
  const numbers = rest.map(numbersOf);
  const clusters = keysOf(ofClusters);
  const own = new Map<string, YoungClass>();
  keysOf(ofSites).forEach((site, row) => {
    let here = own.get(site);
    if (here === undefined) {
      here = { species, of, code, clusters: [], numbers: [] };
      own.set(site, here);
      const known = sites.get(site);
      if (known === undefined) sites.set(site, [here]);
      else known.push(here);
    }
    here.clusters.push(clusters[row] ?? '');
    here.numbers.push(numbers.map((column) => column[row] ?? 0));
  });
}
