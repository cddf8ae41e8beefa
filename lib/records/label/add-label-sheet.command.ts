import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkLabelSheet } from './check-label-sheet';
import type { addLabelSheetInput } from './label-sheet.input';

/** Keeps a sheet of labels that is not among the ready ones, for everybody in the network. */
export async function addLabelSheet(
  context: WriteContext,
  input: z.output<typeof addLabelSheetInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  if (actor.role === 'funder') return notFound;
  const id = input.id ?? newId();
  if (await db.labelSheet.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const problem = await checkLabelSheet(context, input, id);
  if (problem) return problem;
  await db.labelSheet.create({
    data: { ...input, networkId: actor.networkId, id, origin, createdById: actor.personId },
  });
  return ok({ id });
}
