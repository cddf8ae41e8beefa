import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { funderReportContent } from './content/funder-report';
import { reportWords } from './report-words';
import { listStories } from './story/list-stories';

/** One report with its stored content, words and stories, and the versions before and after it that the actor may read. */
export async function getReport({ db }: ReadContext, id: string) {
  const row = await db.report.findFirst({
    where: { id, voidedAt: null },
    include: {
      follows: { select: { id: true, version: true, voidedAt: true } },
      followedBy: { where: { voidedAt: null }, select: { id: true, version: true, publishedAt: true } },
    },
  });
  if (!row) return undefined;
  const later = row.followedBy[0];
  return {
    id: row.id,
    title: row.title,
    version: row.version,
    rebuilt: row.rebuiltFromId !== null,
    revision: row.revision,
    publishedAt: row.publishedAt?.toISOString(),
    content: funderReportContent.parse(row.content),
    words: reportWords.parse(row.words),
    stories: await listStories(db, id),
    earlier:
      row.follows && !row.follows.voidedAt ? { id: row.follows.id, version: row.follows.version } : undefined,
    later: later && { id: later.id, version: later.version, published: later.publishedAt !== null },
  };
}

export type ReportView = NonNullable<Awaited<ReturnType<typeof getReport>>>;
