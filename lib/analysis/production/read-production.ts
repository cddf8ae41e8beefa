import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Destination, MaterialKind } from '@/lib/database/generated/enums';
import { notResidues } from '@/lib/growing/residue-kinds';

export type Period = { readonly from: string; readonly to: string };

/** An amount of one site, so that a report can tell whether a sum would give a single site away. */
export type SiteAmount = { readonly siteId: string; readonly grams: number };

export type Production = {
  /** Fresh mass by the day of weighing. */
  readonly harvested: readonly SiteAmount[];
  /** The same by where it went; what was not said is `unsaid`. */
  readonly destinations: readonly (SiteAmount & { readonly destination: Destination | 'unsaid' })[];
  /**
   * Dry substrate of batches by the day of inoculation and the material they are mainly made of, also of what is no residue
   * (`growing/residue-kinds`); second lives and supplements left out.
   */
  readonly residues: readonly (SiteAmount & {
    readonly material: MaterialKind | 'mixed';
    readonly assumed: boolean;
  })[];
  /** Batches on residues started in the period whose dry mass is not known; second lives left out. */
  readonly batchesWithoutDryMass: number;
  /** Batches started, by site: counts, not grams. */
  readonly started: readonly SiteAmount[];
  /** Sites with a batch started or a harvest weighed in the period. */
  readonly sitesActive: readonly string[];
  /** People who started a batch or weighed a harvest in it and agreed to be counted; each once. */
  readonly peopleActive: number;
};

/** What a network produced in a period: harvests by their own day, batches by inoculation. */
export async function readProduction({ db, actor }: ReadContext, { from, to }: Period): Promise<Production> {
  const network = actor.networkId;
  const harvested = await db.$queryRaw<SiteAmount[]>`
    select site_id::text as "siteId", sum(fresh_grams)::float8 as grams from weighing
    where network_id = ${network}::uuid and voided_at is null and weighed_on between ${from}::date and ${to}::date
    group by site_id order by site_id`;
  const said = await db.$queryRaw<(SiteAmount & { destination: Destination })[]>`
    select d.site_id::text as "siteId", d.destination::text as destination, sum(d.grams)::float8 as grams
    from weighing_destination d join weighing w on w.network_id = d.network_id and w.id = d.weighing_id
    where d.network_id = ${network}::uuid and d.voided_at is null and w.voided_at is null
      and w.weighed_on between ${from}::date and ${to}::date
    group by d.site_id, d.destination order by d.site_id, d.destination`;
  const residues = await db.$queryRaw<
    (SiteAmount & { material: MaterialKind | 'mixed'; assumed: boolean })[]
  >`
    select b.site_id::text as "siteId", coalesce(m.kind::text, 'mixed') as material,
      bool_or(b.dry_assumed) as assumed, sum(b.dry_grams - b.dry_supplement_grams)::float8 as grams
    from batch b left join material m on m.network_id = b.network_id and m.id = b.material_id
    where b.network_id = ${network}::uuid and b.voided_at is null and not b.second_life and b.dry_grams is not null
      and b.inoculated_on between ${from}::date and ${to}::date
    group by b.site_id, coalesce(m.kind::text, 'mixed') order by b.site_id, 2`;
  const started = await db.$queryRaw<(SiteAmount & { without: number })[]>`
    select b.site_id::text as "siteId", count(*)::float8 as grams,
      (count(*) filter (where b.dry_grams is null and not b.second_life
        and (m.kind is null or m.kind::text <> all (${[...notResidues]}::text[]))))::int as without
    from batch b left join material m on m.network_id = b.network_id and m.id = b.material_id
    where b.network_id = ${network}::uuid and b.voided_at is null
      and b.inoculated_on between ${from}::date and ${to}::date
    group by b.site_id order by b.site_id`;
  const active = await db.$queryRaw<{ siteId: string }[]>`
    select distinct site_id::text as "siteId" from (
      select site_id from batch where network_id = ${network}::uuid and voided_at is null
        and inoculated_on between ${from}::date and ${to}::date
      union all select site_id from weighing where network_id = ${network}::uuid and voided_at is null
        and weighed_on between ${from}::date and ${to}::date) a order by 1`;
  const [people] = await db.$queryRaw<{ people: number }[]>`
    select count(distinct p.person_id)::int as people from (
      select started_by_id as person_id from batch where network_id = ${network}::uuid and voided_at is null
        and inoculated_on between ${from}::date and ${to}::date
      union all select created_by_id from weighing where network_id = ${network}::uuid and voided_at is null
        and weighed_on between ${from}::date and ${to}::date) p
    join membership m on m.network_id = ${network}::uuid and m.person_id = p.person_id and m.counted_in_reports`;
  return {
    harvested,
    destinations: [...said, ...unsaidOf(harvested, said)],
    residues,
    batchesWithoutDryMass: started.reduce((sum, { without }) => sum + without, 0),
    started,
    sitesActive: active.map(({ siteId }) => siteId),
    peopleActive: people?.people ?? 0,
  };
}

function unsaidOf(harvested: readonly SiteAmount[], said: readonly SiteAmount[]) {
  return harvested.flatMap(({ siteId, grams }) => {
    const known = said.filter((one) => one.siteId === siteId).reduce((sum, one) => sum + one.grams, 0);
    return grams > known ? [{ siteId, destination: 'unsaid' as const, grams: grams - known }] : [];
  });
}
