import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { unitLedger } from '../batch/unit-ledger';
import { asCalendarDate } from '../fields/stored-date';
import { inParts } from './in-parts';
import { readLinks } from './read-links';
import type { TracedBatch } from './trace-view';

const live = { voidedAt: null };

/** What became of batches, of those the actor may see, the earliest first. */
export async function readTracedBatches(
  context: ReadContext,
  ids: readonly string[],
): Promise<TracedBatch[]> {
  const rows = await inParts(ids, (part) =>
    context.db.batch.findMany({
      where: { id: { in: part } },
      include: {
        site: { select: { name: true } },
        findings: {
          where: live,
          include: { followUps: { where: live, orderBy: [{ doneOn: 'asc' }, { id: 'asc' }] } },
        },
        losses: { where: live },
      },
    }),
  );
  const moves = new Map<string, number>();
  for (const { from, to, amount, voided } of await readLinks(context, 'on', 'batch', ids))
    if (voided === null && to.kind === 'batch') moves.set(from.id, (moves.get(from.id) ?? 0) + (amount ?? 0));
  const batches: TracedBatch[] = [];
  for (const row of rows) {
    const moved = moves.get(row.id) ?? 0;
    const { findings, losses } = row;
    const ledger = unitLedger({ inoculated: row.unitCount, findings, losses, moved });
    const clean = losses.map((loss) => [loss.cause, loss.units - loss.contaminatedUnits] as const);
    batches.push({
      id: row.id,
      code: row.code,
      siteId: row.siteId,
      siteName: row.site.name,
      containerKind: row.containerKind,
      unitCount: row.unitCount,
      secondLife: row.secondLife,
      inoculatedOn: asCalendarDate(row.inoculatedOn),
      closedOn: row.closedOn === null ? null : asCalendarDate(row.closedOn),
      closeReason: row.closeReason,
      live: row.closedOn === null ? ledger.live : 0,
      contaminated: ledger.contaminated,
      lostClean: clean.reduce((sum, [, units]) => sum + units, 0),
      moved,
      signs: added(findings.map(({ sign, units }) => [sign, units] as const)),
      causes: added(clean),
    });
  }
  return batches.sort((a, b) => a.inoculatedOn.localeCompare(b.inoculatedOn) || (a.id < b.id ? -1 : 1));
}

function added<Name extends string>(
  counts: readonly (readonly [Name, number])[],
): Partial<Record<Name, number>> {
  const sums: Partial<Record<Name, number>> = {};
  for (const [name, count] of counts) if (count > 0) sums[name] = (sums[name] ?? 0) + count;
  return sums;
}
