import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkLabelSheet } from './check-label-sheet';
import type { correctLabelSheetInput } from './label-sheet.input';

/** Puts a network's own sheet right: the coordinator, or whoever added it. */
export async function correctLabelSheet(
  context: WriteContext,
  input: z.output<typeof correctLabelSheetInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  const { id, revision, reason: _reason, ...data } = input;
  const sheet = await db.labelSheet.findFirst({ where: { id, voidedAt: null } });
  if (!sheet || (actor.role !== 'coordinator' && sheet.createdById !== actor.personId)) return notFound;
  const problem = await checkLabelSheet(context, data, id);
  if (problem) return problem;
  const { count } = await db.labelSheet.updateMany({ where: { id, revision, voidedAt: null }, data });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: sheet.revision };
}
