import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type NoticeView, noticeInclude, noticeView } from './notice-view';

/** The notices to the actor's sites that stand and that the actor has not marked read, the latest first. */
export async function listUnreadNotices({ db, actor }: ReadContext): Promise<NoticeView[]> {
  if (actor.role !== 'member') return [];
  const rows = await db.lotNotice.findMany({
    where: { voidedAt: null, reads: { none: { personId: actor.personId, voidedAt: null } } },
    include: noticeInclude,
    orderBy: { id: 'desc' },
  });
  return rows.map(noticeView);
}
