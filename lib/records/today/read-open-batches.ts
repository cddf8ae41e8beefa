import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind } from '@/lib/database/generated/enums';
import type { ExpectedColumns } from '../settings/expected-days-columns';

/** An open batch with the last day of each kind of entry; days 'YYYY-MM-DD'. */
export type OpenBatchRow = ExpectedColumns & {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly speciesId: string;
  readonly speciesEn: string;
  readonly speciesEs: string;
  readonly container: ContainerKind;
  readonly unitCount: number;
  readonly inoculatedOn: string;
  readonly secondLife: boolean;
  readonly judgedOn: string | null;
  readonly inspectedOn: string | null;
  readonly colonisedOn: string | null;
  readonly pinsOn: string | null;
  readonly pickedOn: string | null;
  readonly enteredOn: string;
  /** Units that some record takes away; counted twice where two records name the same unit. */
  readonly unitsNamed: number;
};

/**
 * Open batches of these sites, or of every site that the actor may see, in one question to the database: so many of the
 * latest begun.
 */
export function readOpenBatches(
  { db, actor }: ReadContext,
  sites: string[] | null,
  most: number,
): Promise<OpenBatchRow[]> {
  const network = actor.networkId;
  return db.$queryRaw<OpenBatchRow[]>`
    select b.id, b.code, b.site_id as "siteId", s.name as "siteName", s.time_zone as "timeZone",
      b.species_id as "speciesId", p.name_en as "speciesEn", p.name_es as "speciesEs",
      b.container_kind::text as container, b.unit_count as "unitCount", b.inoculated_on::text as "inoculatedOn",
      b.second_life as "secondLife", b.contamination_assessed_on::text as "judgedOn",
      greatest(k.last_on, f.last_on)::text as "inspectedOn",
      c.colonised_on::text as "colonisedOn", c.pins_on::text as "pinsOn", h.last_on::text as "pickedOn",
      greatest(b.inoculated_on, k.last_on, f.last_on, c.last_on, h.last_on, l.last_on)::text as "enteredOn",
      (coalesce(f.units, 0) + coalesce(l.units, 0) + coalesce(m.units, 0))::int as "unitsNamed",
      w.first_look_days as "firstLookDays",
      w.colonised_from_days as "colonisedFromDays", w.colonised_to_days as "colonisedToDays",
      w.pins_from_days as "pinsFromDays", w.pins_to_days as "pinsToDays",
      w.first_harvest_from_days as "firstHarvestFromDays", w.first_harvest_to_days as "firstHarvestToDays",
      w.between_flushes_from_days as "betweenFlushesFromDays", w.between_flushes_to_days as "betweenFlushesToDays"
    from (select * from batch
      where network_id = ${network}::uuid and closed_on is null and voided_at is null and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[]))
      order by inoculated_on desc, id desc limit ${most}) b
    join site s on s.network_id = b.network_id and s.id = b.site_id and s.left_at is null
    join species p on p.network_id = b.network_id and p.id = b.species_id
    left join assessment_window w on w.network_id = b.network_id and w.species_id = b.species_id
      and w.container_kind = b.container_kind and w.voided_at is null
    left join lateral (select max(looked_on) as last_on from look
      where network_id = ${network}::uuid and batch_id = b.id and voided_at is null) k on true
    left join lateral (select max(found_on) as last_on, sum(units) as units from finding
      where network_id = ${network}::uuid and batch_id = b.id and voided_at is null) f on true
    left join lateral (select max(lost_on) as last_on, sum(units) as units from loss
      where network_id = ${network}::uuid and batch_id = b.id and voided_at is null) l on true
    left join lateral (select max(checked_on) as last_on,
        min(checked_on) filter (where kind = 'fully_colonised') as colonised_on,
        min(checked_on) filter (where kind = 'pins_seen') as pins_on from "check"
      where network_id = ${network}::uuid and batch_id = b.id and voided_at is null) c on true
    left join lateral (select max(g.weighed_on) as last_on from weighing_line i
      join weighing g on g.network_id = i.network_id and g.id = i.weighing_id and g.voided_at is null
      where i.network_id = ${network}::uuid and i.batch_id = b.id and i.voided_at is null) h on true
    left join lateral (select sum(units_moved) as units from second_life_source
      where network_id = ${network}::uuid and source_batch_id = b.id and voided_at is null) m on true
    order by b.inoculated_on desc, b.id desc`;
}
