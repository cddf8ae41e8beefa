import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { noSql, sql } from '@/lib/database/sql-text';

/** What an added row can have become, in the order in which it is voided: what hangs on other records first. */
export const addedTables = [
  { table: sql`public.weighing`, coded: false },
  { table: sql`public.finding`, coded: false },
  { table: sql`public.batch`, coded: true },
  { table: sql`public.treatment_run`, coded: true },
  { table: sql`public.spawn_lot`, coded: true },
  { table: sql`public.substrate_lot`, coded: true },
  { table: sql`public.site`, coded: true },
] as const;

type Added = {
  readonly networkId: string;
  readonly ids: readonly string[];
  /** When the table was brought: nothing of it is older. */
  readonly since: Date;
  readonly now: Date;
  readonly reason: string;
};

/**
 * Voids those of the ids that stand in a table; answers how many. A code is free again, as the table that brought it may be
 * added once more; which one it was stays in the history.
 */
export function voidAdded(
  db: ScopedDb,
  { table, coded }: (typeof addedTables)[number],
  { networkId, ids, since, now, reason }: Added,
): Promise<number> {
  const free = coded ? sql`, code = 'OUT-' || upper(right(replace(id::text, '-', ''), 12))` : noSql;
  return db.$executeRaw`
    update ${table} set voided_at = ${now}, void_reason = ${reason}${free}
    where network_id = ${networkId}::uuid and id = any(${ids}::uuid[]) and voided_at is null
      and origin = 'file_import' and created_at >= ${since}`;
}

/** How many standing records hang on voided ones of these ids. */
export async function hangingOnVoided(db: ScopedDb, ids: string[]): Promise<number> {
  const live = { voidedAt: null };
  const gone = { voidedAt: { not: null } };
  const some = { in: ids };
  const batchStands = { ...live, batch: live };
  const ofGone = { where: { batchId: some, ...live, batch: gone } };
  const counts = [
    await db.finding.count(ofGone),
    await db.look.count(ofGone),
    await db.loss.count(ofGone),
    await db.check.count(ofGone),
    await db.weighingLine.count({ where: { batchId: some, ...live, weighing: live, batch: gone } }),
    await db.secondLifeSource.count({
      where: { sourceBatchId: some, ...live, batch: live, sourceBatch: gone },
    }),
    await db.batchComponent.count({ where: { treatmentRunId: some, ...batchStands, run: gone } }),
    await db.batchComponent.count({ where: { substrateLotId: some, ...batchStands, lot: gone } }),
    await db.spawnShare.count({ where: { spawnLotId: some, ...batchStands, lot: gone } }),
    await db.spawnLot.count({ where: { parentLotId: some, ...live, parent: gone } }),
    await db.batch.count({ where: { siteId: some, ...live, site: gone } }),
  ];
  return counts.reduce((sum, count) => sum + count, 0);
}
