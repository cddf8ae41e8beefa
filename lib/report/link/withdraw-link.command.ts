import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { withdrawLinkInput } from './link.input';

/** Ends a link at once; what was opened by it stays in the log. */
export async function withdrawLink(
  { db, actor, now }: WriteContext,
  { id }: z.output<typeof withdrawLinkInput>,
): Promise<Result<{ reportId: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const link = await db.reportLink.findFirst({ where: { id } });
  if (!link) return notFound;
  await db.reportLink.updateMany({
    where: { id, voidedAt: null },
    data: { voidedAt: now, voidReason: 'withdrawn by a coordinator' },
  });
  return ok({ reportId: link.reportId });
}
