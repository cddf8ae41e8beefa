import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, TrimState } from '@/lib/database/generated/enums';
import { unitsOfBatches } from '../batch/batch-units';

/** A batch as a weighing needs it: how much it already gave, and how many units are alive. */
export type WeighedBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly site: { readonly timeZone: string; readonly trimDefault: TrimState };
  /** YYYY-MM-DD. */
  readonly inoculatedOn: string;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly liveUnits: number;
  readonly dryGrams: number | null;
  readonly earlierGrams: number;
  readonly earlier: readonly EarlierHarvest[];
};

/** A harvest that a batch gave before: its day (YYYY-MM-DD) and its flush. */
export type EarlierHarvest = { readonly on: string; readonly flush: number };

type Row = Omit<WeighedBatch, 'site' | 'liveUnits' | 'earlierGrams' | 'earlier'> & WeighedBatch['site'];

type Line = EarlierHarvest & { readonly batchId: string; readonly freshGrams: number };

/** The columns that are needed and no other: a table of harvests asks for thousands of batches. */
function batchRows({ db, actor }: ReadContext, ids: readonly string[]): Promise<Row[]> {
  return db.$queryRaw<Row[]>`
    select b.id::text, b.code, b.site_id::text as "siteId", s.time_zone as "timeZone",
      s.trim_default::text as "trimDefault", b.inoculated_on::text as "inoculatedOn",
      b.container_kind::text as "containerKind", b.unit_count as "unitCount", b.dry_grams as "dryGrams"
    from public.batch b
    join public.site s on s.network_id = b.network_id and s.id = b.site_id
    where b.network_id = ${actor.networkId}::uuid and b.id = any(${ids}::uuid[]) and b.voided_at is null`;
}

function earlierLines(
  { db, actor }: ReadContext,
  ids: readonly string[],
  replaces: string | undefined,
): Promise<Line[]> {
  return db.$queryRaw<Line[]>`
    select l.batch_id::text as "batchId", w.weighed_on::text as "on", l.flush, l.fresh_grams as "freshGrams"
    from public.weighing_line l
    join public.weighing w on w.network_id = l.network_id and w.id = l.weighing_id
    where l.network_id = ${actor.networkId}::uuid and l.batch_id = any(${ids}::uuid[])
      and l.voided_at is null and w.voided_at is null
      and l.weighing_id is distinct from ${replaces ?? null}::uuid`;
}

/** The batches of a weighing in the order asked for; unknown ones are left out. `replaces` is a weighing not to count. */
export async function weighedBatches(
  context: ReadContext,
  ids: readonly string[],
  replaces: string | undefined,
): Promise<WeighedBatch[]> {
  if (ids.length === 0) return [];
  const rows = await batchRows(context, ids);
  const units = await unitsOfBatches(context, rows);
  const grams = new Map<string, number>();
  const earlier = new Map<string, EarlierHarvest[]>();
  for (const { batchId, on, flush, freshGrams } of await earlierLines(context, ids, replaces)) {
    grams.set(batchId, (grams.get(batchId) ?? 0) + freshGrams);
    const before = earlier.get(batchId);
    if (before) before.push({ on, flush });
    else earlier.set(batchId, [{ on, flush }]);
  }
  // Thousands of them are held at once: what many have in common is there once.
  const texts = new Map<string, string>(ids.map((id) => [id, id]));
  const once = <T extends string>(text: T): T => {
    const known = texts.get(text);
    if (known === undefined) texts.set(text, text);
    return known === undefined ? text : (known as T);
  };
  const sites = new Map<string, WeighedBatch['site']>();
  const views = new Map<string, WeighedBatch>();
  for (const [index, row] of rows.entries()) {
    const { timeZone, trimDefault } = row;
    const site = sites.get(row.siteId) ?? { timeZone, trimDefault };
    sites.set(row.siteId, site);
    views.set(row.id, {
      id: once(row.id),
      code: row.code,
      siteId: once(row.siteId),
      site,
      inoculatedOn: once(row.inoculatedOn),
      containerKind: once(row.containerKind),
      unitCount: row.unitCount,
      liveUnits: units[index]?.live ?? 0,
      dryGrams: row.dryGrams,
      earlierGrams: grams.get(row.id) ?? 0,
      earlier: earlier.get(row.id) ?? [],
    });
  }
  return ids.flatMap((id) => views.get(id) ?? []);
}
