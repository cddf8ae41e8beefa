import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { NoticedKind } from './lot-notice.input';
import { type NoticeView, noticeInclude, noticeView } from './notice-view';
import { readReaders, type SiteReaders } from './read-readers';

export type LotNotice = NoticeView & {
  /** Who has read it and who has not, by site; only the coordinator is told. */
  readonly readers: readonly SiteReaders[] | null;
  /** When the actor marked it read. */
  readonly readAt: string | null;
};

/** The notices about a lot that the actor may see, the latest first, withdrawn ones too. */
export async function listLotNotices(
  context: ReadContext,
  kind: NoticedKind,
  lotId: string,
): Promise<LotNotice[]> {
  const { db, actor } = context;
  const rows = await db.lotNotice.findMany({
    where: kind === 'spawn-lot' ? { spawnLotId: lotId } : { substrateLotId: lotId },
    include: { ...noticeInclude, reads: { where: { voidedAt: null } } },
    orderBy: { id: 'desc' },
  });
  const notices: LotNotice[] = [];
  for (const row of rows) {
    const own = row.reads.find(({ personId }) => personId === actor.personId);
    notices.push({
      ...noticeView(row),
      readers: actor.role === 'coordinator' ? await readReaders(context, row.id) : null,
      readAt: own?.readAt.toISOString() ?? null,
    });
  }
  return notices;
}
