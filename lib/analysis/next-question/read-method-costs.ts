import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays } from '@/lib/growing/calendar-date';
import { costMethodKey, readBatchCosts } from '../costs/read-batch-costs';
import { grouped } from '../programme/grouped';
import type { CostedDryBatch } from './method-cost';

/** A year of closed batches: what things cost now, in every season. */
const daysBack = 365;

type WaterRow = { readonly batchId: string; readonly millilitres: number };

/** What the closed batches of a year took, each as far as it was written down, for those of known dry mass. */
export async function readMethodCosts(context: ReadContext, to: string) {
  const network = await context.db.network.findFirstOrThrow({ where: { id: context.actor.networkId } });
  const { currency, labourMinorPerHour } = network;
  const period = { from: addDays(to, -daysBack), to };
  const costed = await readBatchCosts(context, period, currency, labourMinorPerHour);
  const water = grouped(await readWater(context, period), ({ batchId }) => batchId);
  const batches = costed.flatMap(({ row, treatments, cost }): CostedDryBatch[] => {
    if (row.dryGrams === null || row.dryGrams === 0) return [];
    const sum = (part: 'labourMinutes' | 'fuelMinor' | 'waterMinor') =>
      [row, ...treatments].reduce<number | null>(
        (total, one) => (total === null || one[part] === null ? null : total + one[part]),
        0,
      );
    const litres = water.get(row.id);
    return [
      {
        siteId: row.siteId,
        method: costMethodKey(row),
        dryGrams: row.dryGrams,
        labourMinutes: sum('labourMinutes'),
        fuelMinor: sum('fuelMinor'),
        waterMinor: sum('waterMinor'),
        waterLitres: litres ? litres.reduce((total, one) => total + one.millilitres, 0) / 1000 : null,
        fullMinor: cost.kind === 'full' ? cost.minor : null,
      },
    ];
  });
  return { currency, batches };
}

/** The water of the runs that treated each batch, shared over the batches of a run by dry mass. */
function readWater({ db, actor }: ReadContext, { from, to }: { readonly from: string; readonly to: string }) {
  return db.$queryRaw<WaterRow[]>`
    with asked as (
      select distinct c.treatment_run_id as run_id from batch b
      join batch_component c on c.network_id = b.network_id and c.batch_id = b.id and c.voided_at is null
      where b.network_id = ${actor.networkId}::uuid and b.voided_at is null and b.closed_on is not null
        and b.inoculated_on between ${from}::date and ${to}::date and c.treatment_run_id is not null
    ), shares as (
      select distinct r.id as run_id, b.id as batch_id, r.water_millilitres, b.dry_grams
      from asked a join treatment_run r on r.network_id = ${actor.networkId}::uuid and r.id = a.run_id
      join batch_component c on c.network_id = r.network_id and c.treatment_run_id = r.id and c.voided_at is null
      join batch b on b.network_id = c.network_id and b.id = c.batch_id and b.voided_at is null
      where r.water_millilitres is not null and r.voided_at is null
    )
    select batch_id::text as "batchId",
      (water_millilitres * (dry_grams::float8 / nullif(sum(dry_grams) over w, 0)))::float8 as millilitres
    from shares where run_id not in (select run_id from shares where dry_grams is null)
    window w as (partition by run_id) order by batch_id, run_id`;
}
