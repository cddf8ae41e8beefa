import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind } from '@/lib/growing/vocabulary';

type Wanted = {
  readonly from: string;
  readonly to: string;
  readonly species: string;
  readonly container: ContainerKind;
};

/** Sites drawn by lot out of `of`. */
export type DrawnSites = { readonly ids: readonly string[]; readonly of: number };

export type DrawLimits = {
  /** About so many batches are read. */
  readonly batches: number;
  /** Of fewer sites the share lost would be that of a few growers, not of the network. */
  readonly fewestSites: number;
};

/**
 * Sites whose batches are together about as many as `most` says, where the network's kept totals hold more than that in the
 * quarters of the period; undefined where all can be read. The order is that of the MD5 of their ids: it has nothing to do
 * with what they grow, and stays the same, so that figures do not jump from one reading to the next.
 */
export async function drawSites(
  { db, actor }: ReadContext,
  { from, to, species, container }: Wanted,
  most: DrawLimits,
): Promise<DrawnSites | undefined> {
  const network = actor.networkId;
  const [known] = await db.$queryRaw<{ batches: number; sites: number }[]>`
    select (select coalesce(sum(batches), 0) from outcome_network_total
        where network_id = ${network}::uuid and container = ${container}::text and span = 'quarter'
          and species_id = ${species}::uuid and measure = 'contamination' and class <> 'voided'
          and starts_on between date_trunc('quarter', ${from}::date) and ${to}::date)::int as batches,
      (select count(*) from site where network_id = ${network}::uuid)::int as sites`;
  if (known === undefined || known.batches <= most.batches) return undefined;
  const wanted = Math.max(most.fewestSites, Math.floor((known.sites * most.batches) / known.batches));
  if (wanted >= known.sites) return undefined;
  const drawn = await db.$queryRaw<{ id: string }[]>`
    select id::text from site where network_id = ${network}::uuid order by md5(id::text), id limit ${wanted}`;
  return { ids: drawn.map(({ id }) => id), of: known.sites };
}
