import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { expectFirstHarvest } from '@/lib/growing/due/expect-first-harvest';
import { goneQuiet } from '@/lib/growing/due/gone-quiet';
import { nextFlush } from '@/lib/growing/due/next-flush';
import { nothingExpected } from '@/lib/growing/expected-days';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { SiteDates } from '../comparison/batch-facts';
import type { BatchNotes } from './batch-faults';

type Row = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly oyster: boolean;
  readonly spawnKnown: boolean;
  readonly container: ContainerKind;
  readonly inoculatedOn: string;
  readonly secondLife: boolean;
  /** Of an open batch; null once it is closed. */
  readonly enteredOn: string | null;
  readonly pinsOn: string | null;
  readonly pickedOn: string | null;
  readonly harvestFrom: number | null;
  readonly harvestTo: number | null;
  readonly flushFrom: number | null;
  readonly flushTo: number | null;
};

/** What the list of faults needs of batches besides their facts, by id. Whether one is quiet follows the network's days alone. */
export async function readBatchNotes(
  { db, actor }: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
  today: SiteDates,
): Promise<ReadonlyMap<string, BatchNotes>> {
  const network = actor.networkId;
  const rows = await db.$queryRaw<Row[]>`
    select b.id::text, b.code, b.site_id::text as "siteId", p.scientific_name ilike 'pleurotus %' as oyster,
      exists (select from spawn_share s where s.network_id = ${network}::uuid and s.batch_id = b.id
        and s.voided_at is null) as "spawnKnown",
      b.container_kind::text as container, b.inoculated_on::text as "inoculatedOn", b.second_life as "secondLife",
      e.entered_on::text as "enteredOn", e.pins_on::text as "pinsOn", e.picked_on::text as "pickedOn",
      w.first_harvest_from_days as "harvestFrom", w.first_harvest_to_days as "harvestTo",
      w.between_flushes_from_days as "flushFrom", w.between_flushes_to_days as "flushTo"
    from batch b
    join species p on p.network_id = b.network_id and p.id = b.species_id
    left join assessment_window w on w.network_id = b.network_id and w.species_id = b.species_id
      and w.container_kind = b.container_kind and w.voided_at is null
    left join lateral (select
        greatest(b.inoculated_on,
          (select max(looked_on) from look where network_id = ${network}::uuid and batch_id = b.id and voided_at is null),
          (select max(found_on) from finding where network_id = ${network}::uuid and batch_id = b.id and voided_at is null),
          (select max(lost_on) from loss where network_id = ${network}::uuid and batch_id = b.id and voided_at is null),
          (select max(checked_on) from "check" where network_id = ${network}::uuid and batch_id = b.id and voided_at is null),
          picked.last_on) as entered_on,
        (select min(checked_on) from "check" where network_id = ${network}::uuid and batch_id = b.id
          and kind = 'pins_seen' and voided_at is null) as pins_on,
        picked.last_on as picked_on
      from (select max(g.weighed_on) as last_on from weighing_line i
        join weighing g on g.network_id = i.network_id and g.id = i.weighing_id and g.voided_at is null
        where i.network_id = ${network}::uuid and i.batch_id = b.id and i.voided_at is null) picked
    ) e on b.closed_on is null
    where b.network_id = ${network}::uuid and b.voided_at is null
      and b.inoculated_on between ${from}::date and ${to}::date`;
  return new Map(
    rows.map((row) => [
      row.id,
      {
        code: row.code,
        isOyster: row.oyster,
        spawnKnown: row.spawnKnown,
        quietFrom: quietFrom(row, today.get(row.siteId)),
      },
    ]),
  );
}

function quietFrom(row: Row, today: string | undefined): string | null {
  if (row.enteredOn === null || today === undefined) return null;
  const { container, inoculatedOn, secondLife, enteredOn, pinsOn, pickedOn } = row;
  const range = (from: number | null, to: number | null) =>
    from === null || to === null ? null : { from, to };
  const batch = {
    ...{ today, container, inoculatedOn, secondLife, enteredOn, pinsOn, pickedOn },
    ...{ liveUnits: 1, judgedOn: null, inspectedOn: null, colonisedOn: null },
    expected: {
      ...nothingExpected,
      firstHarvest: range(row.harvestFrom, row.harvestTo),
      betweenFlushes: range(row.flushFrom, row.flushTo),
    },
    own: { colonised: null, firstHarvest: null },
  };
  const awaited = pickedOn === null ? expectFirstHarvest(batch) : nextFlush(batch);
  return goneQuiet(batch, awaited)?.from ?? null;
}
