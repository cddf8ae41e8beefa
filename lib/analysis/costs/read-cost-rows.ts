import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { RecordedCosts } from '@/lib/growing/batch-cost';
import type { Period } from '../production/read-production';

export type CostBatch = RecordedCosts & {
  readonly id: string;
  readonly siteId: string;
  readonly methodId: string | null;
  readonly mixedMethod: boolean;
  readonly secondLife: boolean;
  readonly spawnGrams: number | null;
  readonly dryGrams: number | null;
  readonly freshGrams: number;
};

/** So much of a lot in a batch; grams as the lot was received, null where they cannot be worked out. */
export type BoughtRow = {
  readonly batchId: string;
  readonly grams: number | null;
  readonly paidMinor: number | null;
  readonly forGrams: number | null;
};

/** A batch closed and inoculated in the period, with what was written down about itself in the network's currency. */
export function readCostBatches({ db, actor }: ReadContext, { from, to }: Period, currency: string) {
  return db.$queryRaw<CostBatch[]>`
    select b.id::text as id, b.site_id::text as "siteId", b.method_id::text as "methodId",
      b.mixed_method as "mixedMethod", b.second_life as "secondLife", b.spawn_grams as "spawnGrams", b.dry_grams as "dryGrams",
      (select coalesce(sum(l.fresh_grams), 0)::float8 from weighing_line l
        join weighing w on w.network_id = l.network_id and w.id = l.weighing_id and w.voided_at is null
        where l.network_id = b.network_id and l.batch_id = b.id and l.voided_at is null) as "freshGrams",
      c.labour_minutes as "labourMinutes", c.supplies_minor as "suppliesMinor", c.fuel_minor as "fuelMinor",
      c.water_minor as "waterMinor"
    from batch b left join cost_note c on c.network_id = b.network_id and c.batch_id = b.id and c.voided_at is null
      and c.currency = ${currency}
    where b.network_id = ${actor.networkId}::uuid and b.voided_at is null and b.closed_on is not null
      and b.inoculated_on between ${from}::date and ${to}::date
    order by b.id`;
}

/**
 * The substrate of those batches. A mass before treatment is the mass as received; otherwise that follows from the dry
 * mass and the moisture of the lot (or, where it was not measured, of its material).
 */
export function readBoughtSubstrate({ db, actor }: ReadContext, { from, to }: Period, currency: string) {
  return db.$queryRaw<BoughtRow[]>`
    select c.batch_id::text as "batchId", p.paid_minor as "paidMinor", p.for_grams as "forGrams",
      round(case
        when c.mass_stage = 'before_treatment' and c.grams is not null then c.grams
        when count(*) over (partition by c.batch_id) = 1 and b.dry_grams is not null then b.dry_grams / (1 - m.moisture / 100)
        when c.grams is not null and b.moisture_percent is not null
          then c.grams * (1 - b.moisture_percent / 100) / (1 - m.moisture / 100)
      end)::int as grams
    from batch_component c
    join batch b on b.network_id = c.network_id and b.id = c.batch_id
    join substrate_lot s on s.network_id = c.network_id and s.id = c.substrate_lot_id
    join material a on a.network_id = s.network_id and a.id = s.material_id
    cross join lateral (select coalesce(s.moisture_percent, a.received_moisture_percent) as moisture) m
    left join lot_price p on p.network_id = s.network_id and p.substrate_lot_id = s.id and p.voided_at is null
      and p.currency = ${currency}
    where c.network_id = ${actor.networkId}::uuid and c.voided_at is null and c.batch_id = any (array(
      select id from batch where network_id = ${actor.networkId}::uuid and voided_at is null and closed_on is not null
        and inoculated_on between ${from}::date and ${to}::date))
    order by c.id`;
}

/** The spawn of those batches; a share without a mass of its own is null. */
export function readBoughtSpawn({ db, actor }: ReadContext, { from, to }: Period, currency: string) {
  return db.$queryRaw<BoughtRow[]>`
    select h.batch_id::text as "batchId", p.paid_minor as "paidMinor", p.for_grams as "forGrams", h.grams
    from batch b
    join spawn_share h on h.network_id = b.network_id and h.batch_id = b.id and h.voided_at is null
    left join lot_price p on p.network_id = h.network_id and p.spawn_lot_id = h.spawn_lot_id and p.voided_at is null
      and p.currency = ${currency}
    where b.network_id = ${actor.networkId}::uuid and b.voided_at is null and b.closed_on is not null
      and b.inoculated_on between ${from}::date and ${to}::date
    order by h.id`;
}
