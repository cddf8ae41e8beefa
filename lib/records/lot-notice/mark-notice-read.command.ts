import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { markNoticeReadInput } from './lot-notice.input';

/** Writes down that a member of a site has read a notice, once; a second press changes nothing. */
export async function markNoticeRead(
  { db, actor, origin, now }: WriteContext,
  { noticeId }: z.output<typeof markNoticeReadInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'member') return notFound;
  const notice = await db.lotNotice.findFirst({ where: { id: noticeId } });
  if (!notice) return notFound;
  const { personId } = actor;
  await db.lotNoticeRead.createMany({
    data: [
      {
        networkId: actor.networkId,
        id: newId(),
        noticeId,
        personId,
        readAt: now,
        origin,
        createdById: personId,
      },
    ],
    skipDuplicates: true,
  });
  return ok({ id: noticeId });
}
