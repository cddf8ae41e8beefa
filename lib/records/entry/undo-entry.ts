import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { voidRecord } from '../void/void-record.command';
import { voidableTable } from '../void/voidable-table';
import type { EntryRequest } from './entry.input';
import { entryCommands } from './entry-commands';

const pressedWithinMinutes = 15;
const arrivesWithinDays = 7;

/**
 * Voids what an earlier entry of the same person made. Pressed within 15 minutes of the server's receipt, by the
 * server's clock or by the phone's (a phone may have had no signal since), and never after a week or once somebody
 * has changed the record. `reason` is stored with the voided record.
 */
export async function undoEntry(
  context: WriteContext,
  { input, madeAt }: EntryRequest,
  reason: string,
): Promise<Result<{ recordId: string; revision: number }>> {
  const { db, actor, now } = context;
  const entryId = typeof input.entryId === 'string' ? input.entryId.toLowerCase() : '';
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(entryId)) return invalid('entryId', 'missing');
  const [receipt] = await db.entryReceipt.findMany({
    where: { personId: actor.personId, entryId },
    orderBy: { savedAt: 'desc' },
    take: 1,
  });
  if (!receipt || receipt.kind === 'undo' || receipt.kind === 'photo') return notFound;
  const minutes = (at: Date) => (at.getTime() - receipt.savedAt.getTime()) / 60_000;
  const inTime =
    minutes(now) <= pressedWithinMinutes ||
    (minutes(madeAt) <= pressedWithinMinutes && minutes(now) <= arrivesWithinDays * 24 * 60);
  const table = entryCommands[receipt.kind].table;
  const standing = await voidableTable(db, table).find(receipt.recordId);
  if (!standing) return notFound;
  if (standing.voidedAt === null) {
    if (!inTime) return invalid('', 'undo-too-late');
    if (standing.revision !== receipt.revision) return invalid('', 'undo-changed');
  }
  const done = await voidRecord(context, {
    kind: table,
    id: receipt.recordId,
    revision: standing.revision,
    reason,
  });
  if (done.kind !== 'ok') return done;
  const after = await voidableTable(db, table).find(receipt.recordId);
  return ok({ recordId: receipt.recordId, revision: after?.revision ?? standing.revision });
}
