import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type NoticeView, noticeInclude, noticeView } from './notice-view';

/** Every notice that stands, of those the actor may see, for whoever is about to use a lot; the latest first. */
export async function listStandingNotices({ db }: ReadContext): Promise<NoticeView[]> {
  const rows = await db.lotNotice.findMany({
    where: { voidedAt: null },
    include: noticeInclude,
    orderBy: { id: 'desc' },
    take: 200,
  });
  return rows.map(noticeView);
}
