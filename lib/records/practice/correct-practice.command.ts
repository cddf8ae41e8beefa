import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { correctPracticeInput } from './practice.input';
import { preparePractice } from './prepare-practice';

/** Puts a practice right, or says that it has ended. */
export async function correctPractice(
  context: WriteContext,
  input: z.output<typeof correctPracticeInput>,
): Promise<Result<{ id: string }>> {
  const { db } = context;
  const { id, revision } = input;
  const existing = await db.adoptedPractice.findFirst({ where: { id, voidedAt: null } });
  if (!existing) return notFound;
  const prepared = await preparePractice(context, { ...input, siteId: existing.siteId });
  if (prepared.kind !== 'ok') return prepared;
  const { count } = await db.adoptedPractice.updateMany({
    where: { id, revision, voidedAt: null },
    data: prepared.value,
  });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: existing.revision };
}
