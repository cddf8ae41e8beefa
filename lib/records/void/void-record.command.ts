import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { stillInUse } from './still-in-use';
import type { voidRecordInput } from './void-record.input';
import { voidableTable } from './voidable-table';

/** Takes a record out of every figure and list, with a reason; it stays readable in the history. */
export async function voidRecord(
  { db, now }: WriteContext,
  input: z.output<typeof voidRecordInput>,
): Promise<Result<{ id: string }>> {
  const table = voidableTable(db, input.kind);
  const standing = await table.find(input.id);
  if (!standing) return notFound;
  if (standing.voidedAt !== null) return ok({ id: input.id });
  const dependants = await stillInUse(db, input.kind, input.id);
  if (dependants > 0) return invalid('', 'still-in-use', { count: dependants });
  const { count } = await table.mark(
    { id: input.id, revision: input.revision, voidedAt: null },
    { voidedAt: now, voidReason: input.reason },
  );
  if (count === 1) return ok({ id: input.id });
  const after = await table.find(input.id);
  return after === null || after.revision === input.revision
    ? notFound
    : { kind: 'conflict', current: after.revision };
}
