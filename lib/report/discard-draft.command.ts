import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { publishReportInput } from './build-report.input';

/** Takes a report that was never published off the list; it stays in the history. */
export async function discardDraft(
  { db, actor, now }: WriteContext,
  { id }: z.output<typeof publishReportInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { count } = await db.report.updateMany({
    where: { id, voidedAt: null, publishedAt: null },
    data: { voidedAt: now, voidReason: 'discarded before it was published' },
  });
  return count === 1 ? ok({ id }) : notFound;
}
