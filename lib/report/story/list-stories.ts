import type { ScopedDb } from '@/lib/access/scoped-db';

/** A story as the report tells it; its picture comes by an address of its own. */
export type ReportStory = {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly picture: { readonly alt: string; readonly widthPx: number; readonly heightPx: number } | undefined;
};

/** The stories of a report in the order in which they were written. */
export async function listStories(db: ScopedDb, reportId: string): Promise<ReportStory[]> {
  const rows = await db.reportStory.findMany({ where: { reportId, voidedAt: null }, orderBy: { id: 'asc' } });
  return rows.map(({ id, title, words, pictureAlt, pictureWidthPx, pictureHeightPx }) => ({
    ...{ id, title, words },
    picture:
      pictureAlt === null || pictureWidthPx === null || pictureHeightPx === null
        ? undefined
        : { alt: pictureAlt, widthPx: pictureWidthPx, heightPx: pictureHeightPx },
  }));
}
