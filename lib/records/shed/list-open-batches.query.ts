import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OpenBatch } from '@/lib/growing/open-batch';
import { unitLedger } from '../batch/unit-ledger';
import { asCalendarDate } from '../fields/stored-date';
import { sitesHere } from '../site/sites-here';

const mostListed = 400;

function byBatch<T extends { readonly batchId: string }>(
  rows: readonly T[],
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) groups.set(row.batchId, [...(groups.get(row.batchId) ?? []), row]);
  return groups;
}

/** Open batches of the actor's sites, latest inoculated first, in six queries whatever their number. */
export async function listOpenBatches(context: ReadContext): Promise<OpenBatch[]> {
  const { db } = context;
  const batches = await db.batch.findMany({
    where: { voidedAt: null, closedOn: null, ...(await sitesHere(context)) },
    include: { site: true, species: true },
    orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
    take: mostListed,
  });
  const ids = batches.map(({ id }) => id);
  const where = { batchId: { in: ids }, voidedAt: null };
  const findings = byBatch(
    await db.finding.findMany({
      where,
      include: { followUps: { where: { voidedAt: null }, orderBy: [{ doneOn: 'asc' }, { id: 'asc' }] } },
    }),
  );
  const losses = byBatch(await db.loss.findMany({ where }));
  const checks = byBatch(
    await db.check.findMany({ where, select: { batchId: true, kind: true }, distinct: ['batchId', 'kind'] }),
  );
  const lines = byBatch(
    await db.weighingLine.findMany({
      where: { ...where, weighing: { voidedAt: null } },
      select: { batchId: true, flush: true, freshGrams: true, weighing: { select: { weighedOn: true } } },
      orderBy: [{ weighing: { weighedOn: 'asc' } }, { flush: 'asc' }],
    }),
  );
  const moved = await db.secondLifeSource.groupBy({
    by: ['sourceBatchId'],
    where: { sourceBatchId: { in: ids }, voidedAt: null, NOT: { batch: { voidedAt: { not: null } } } },
    _sum: { unitsMoved: true },
  });
  return batches.map((batch) => {
    const { live } = unitLedger({
      inoculated: batch.unitCount,
      findings: findings.get(batch.id) ?? [],
      losses: losses.get(batch.id) ?? [],
      moved: moved.find(({ sourceBatchId }) => sourceBatchId === batch.id)?._sum.unitsMoved ?? 0,
    });
    const picked = lines.get(batch.id) ?? [];
    const last = picked.at(-1);
    const seen = (checks.get(batch.id) ?? []).map(({ kind }) => kind);
    return {
      id: batch.id,
      code: batch.code,
      siteId: batch.siteId,
      siteName: batch.site.name,
      timeZone: batch.site.timeZone,
      speciesEn: batch.species.nameEn,
      speciesEs: batch.species.nameEs,
      container: batch.containerKind,
      inoculatedOn: asCalendarDate(batch.inoculatedOn),
      liveUnits: live,
      unitCount: batch.unitCount,
      lastFlush: last?.flush ?? null,
      lastPickedOn: last ? asCalendarDate(last.weighing.weighedOn) : null,
      flushGapDays: null,
      trimDefault: batch.site.trimDefault,
      colonised: seen.includes('fully_colonised'),
      pinsSeen: seen.includes('pins_seen'),
      dryGrams: batch.dryGrams,
      pickedGrams: picked.reduce((sum, { freshGrams }) => sum + freshGrams, 0),
    };
  });
}
