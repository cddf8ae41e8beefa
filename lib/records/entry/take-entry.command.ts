import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { voidableTable } from '../void/voidable-table';
import type { EntryRequest } from './entry.input';
import { entryCommands, type RecordKind } from './entry-commands';
import { undoEntry } from './undo-entry';

/** What an entry came to; the same for every repeat of it. */
export type TakenEntry = {
  readonly recordId: string;
  readonly revision: number;
  readonly savedAt: string;
};

type Made = { readonly recordId: string; readonly revision: number };

/** Makes two sendings of one entry wait for each other until the first has committed or gone. */
async function lockEntry({ db, actor }: WriteContext, entryId: string): Promise<void> {
  const name = `entry ${actor.networkId} ${entryId}`;
  await db.$queryRaw`select 1 from pg_advisory_xact_lock(hashtextextended(${name}, 0))`;
}

/** Runs the command of the entry's kind: a correction when the input names the revision that it was made from. */
async function makeRecord(
  context: WriteContext,
  kind: RecordKind,
  entry: EntryRequest,
): Promise<Result<Made>> {
  const { table, record, correct } = entryCommands[kind];
  const find = voidableTable(context.db, table).find;
  const { input } = entry;
  if (input.revision === undefined) {
    const standing = await find(entry.id);
    // An earlier wording of this entry was saved and its answer lost: two versions, for the person to choose from.
    if (standing)
      return standing.voidedAt === null
        ? { kind: 'conflict', current: standing.revision }
        : invalid('', 'entry-taken-back');
  } else if (!correct) return invalid('revision', 'unknown-field');
  const done =
    input.revision === undefined
      ? await record(context, { ...input, id: entry.id })
      : await (correct ?? record)(context, { ...input, id: input.id ?? entry.id });
  if (done.kind !== 'ok') return done;
  const after = await find(done.value.id);
  return after ? ok({ recordId: done.value.id, revision: after.revision }) : notFound;
}

/**
 * Takes an entry exactly once: record and receipt are written in one transaction, the same entry sent again gets its
 * first answer, and its key with another content is refused. Refusals leave no receipt, since they had no effect.
 */
export async function takeEntry(
  context: WriteContext,
  entry: EntryRequest & { readonly undoReason: string },
): Promise<Result<TakenEntry>> {
  const { db, actor, now } = context;
  const { id, key, kind, requestHash } = entry;
  if (entry.personId !== actor.personId || entry.networkId !== actor.networkId) return notFound;
  await lockEntry(context, id);
  const receipts = await db.entryReceipt.findMany({
    where: { personId: actor.personId, OR: [{ key }, { entryId: id }] },
  });
  const sameKey = receipts.find((receipt) => receipt.key === key);
  if (sameKey && sameKey.requestHash !== requestHash) return invalid('', 'key-reused');
  const first = sameKey ?? receipts.find((receipt) => receipt.requestHash === requestHash);
  if (first)
    return ok({
      recordId: first.recordId,
      revision: first.revision,
      savedAt: first.savedAt.toISOString(),
    });
  const made =
    kind === 'undo'
      ? await undoEntry(context, entry, entry.undoReason)
      : await makeRecord(context, kind, entry);
  if (made.kind !== 'ok') return made;
  await db.entryReceipt.create({
    data: {
      networkId: actor.networkId,
      personId: actor.personId,
      ...{ key, entryId: id, kind, requestHash, savedAt: now },
      ...made.value,
    },
  });
  return ok({ ...made.value, savedAt: now.toISOString() });
}
