import type { ScopedDb } from '@/lib/access/scoped-db';
import { asCalendarDate } from '@/lib/records/fields/stored-date';

/** A story as the report tells it; its picture comes by an address of its own. */
export type ReportStory = {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly picture: { readonly alt: string; readonly widthPx: number; readonly heightPx: number } | undefined;
  /** What those in it no longer agree to, and since when, 'YYYY-MM-DD'. */
  readonly withdrawn: { readonly part: 'picture' | 'story'; readonly on: string } | undefined;
};

export type StoredStory = {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly pictureAlt: string | null;
  readonly pictureWidthPx: number | null;
  readonly pictureHeightPx: number | null;
  readonly withdrawnPart: string | null;
};

/** `withdrawnOn`: the day of the withdrawal, where there was one. */
export function toReportStory(row: StoredStory, withdrawnOn: string | undefined): ReportStory {
  const { id, title, words, pictureAlt, pictureWidthPx, pictureHeightPx, withdrawnPart } = row;
  const complete = pictureAlt !== null && pictureWidthPx !== null && pictureHeightPx !== null;
  return {
    ...{ id, title, words },
    picture: complete ? { alt: pictureAlt, widthPx: pictureWidthPx, heightPx: pictureHeightPx } : undefined,
    withdrawn:
      withdrawnOn === undefined
        ? undefined
        : { part: withdrawnPart === 'story' ? 'story' : 'picture', on: withdrawnOn },
  };
}

/** The stories of a report in the order in which they were written. */
export async function listStories(db: ScopedDb, reportId: string): Promise<ReportStory[]> {
  const rows = await db.reportStory.findMany({ where: { reportId, voidedAt: null }, orderBy: { id: 'asc' } });
  return rows.map((row) =>
    toReportStory(row, row.consentWithdrawnOn === null ? undefined : asCalendarDate(row.consentWithdrawnOn)),
  );
}
