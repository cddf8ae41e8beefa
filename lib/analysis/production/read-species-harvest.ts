import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Period, SiteAmount } from './read-production';

export type SpeciesHarvest = SiteAmount & {
  readonly speciesCode: string;
  readonly speciesEn: string;
  readonly speciesEs: string;
};

/** Fresh mass of a period by the species of the batches weighed, by site. */
export async function readSpeciesHarvest(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<SpeciesHarvest[]> {
  return db.$queryRaw<SpeciesHarvest[]>`
    select l.site_id::text as "siteId", s.code as "speciesCode", s.name_en as "speciesEn", s.name_es as "speciesEs",
      sum(l.fresh_grams)::float8 as grams
    from weighing_line l
    join weighing w on w.network_id = l.network_id and w.id = l.weighing_id
    join batch b on b.network_id = l.network_id and b.id = l.batch_id
    join species s on s.network_id = b.network_id and s.id = b.species_id
    where l.network_id = ${actor.networkId}::uuid and l.voided_at is null and w.voided_at is null
      and w.weighed_on between ${from}::date and ${to}::date
    group by l.site_id, s.code, s.name_en, s.name_es order by s.name_en, l.site_id`;
}
