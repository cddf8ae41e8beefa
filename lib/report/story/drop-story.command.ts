import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { dropStoryInput } from './story.input';

/** Takes a story out of a report that is not published; it stays in the history. */
export async function dropStory(
  { db, actor, now }: WriteContext,
  { id }: z.output<typeof dropStoryInput>,
): Promise<Result<{ reportId: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const story = await db.reportStory.findFirst({
    where: { id, voidedAt: null, report: { publishedAt: null, voidedAt: null } },
  });
  if (!story) return notFound;
  await db.reportStory.updateMany({
    where: { id },
    data: { voidedAt: now, voidReason: 'taken out of the report' },
  });
  return ok({ reportId: story.reportId });
}
