import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type NoticeView, noticeInclude, noticeView } from './notice-view';

export async function getNotice({ db }: ReadContext, id: string): Promise<NoticeView | undefined> {
  const row = await db.lotNotice.findFirst({ where: { id }, include: noticeInclude });
  return row ? noticeView(row) : undefined;
}
