import 'server-only';
import { z } from 'zod';
import { asNobody } from '@/lib/access/scoped-db';
import { hashToken } from '@/lib/access/token';
import { funderReportContent } from '../content/funder-report';
import { reportWords } from '../report-words';
import { toReportStory } from '../story/list-stories';

/** How a visitor reads the report that a link opens. */
export type LinkForm = 'page' | 'pdf' | 'xlsx' | 'package';

const story = z.object({
  id: z.string(),
  title: z.string(),
  words: z.string(),
  pictureAlt: z.string().nullable(),
  pictureWidthPx: z.number().nullable(),
  pictureHeightPx: z.number().nullable(),
  consentWithdrawnOn: z.string().nullable(),
  withdrawnPart: z.string().nullable(),
});

const opened = z.object({
  language: z.enum(['en', 'es']),
  time_zone: z.string(),
  region: z.string(),
  expires_at: z.date(),
  report: z.object({
    id: z.string(),
    title: z.string(),
    version: z.number(),
    publishedAt: z.string(),
    networkName: z.string(),
    networkCode: z.string(),
    content: funderReportContent,
    words: reportWords,
  }),
  stories: z.array(story),
});

/** Whether a link opens a report now. Asking is not a visit. */
export async function linkIsOpen(token: string): Promise<boolean> {
  const rows = await asNobody(
    (db) => db.$queryRaw<{ open: boolean }[]>`select app.report_link_is_open(${hashToken(token)}) as open`,
  );
  return rows[0]?.open ?? false;
}

/** The published report that a link opens, noted in the log of its visits; undefined when the link opens nothing (any more). */
export async function openLink(token: string, form: LinkForm) {
  const rows = await asNobody(
    (db) => db.$queryRaw`select * from app.open_report_link(${hashToken(token)}, ${form})`,
  );
  const row = z.array(opened).parse(rows)[0];
  if (!row) return undefined;
  const stories = row.stories.map((one) => toReportStory(one, one.consentWithdrawnOn ?? undefined));
  return {
    language: row.language,
    timeZone: row.time_zone,
    region: row.region,
    expiresAt: row.expires_at.toISOString(),
    report: { ...row.report, publishedAt: new Date(row.report.publishedAt).toISOString(), stories },
  };
}

export type OpenedLink = NonNullable<Awaited<ReturnType<typeof openLink>>>;

/** The picture of a story of the report that a link opens. */
export async function linkPicture(
  token: string,
  storyId: string,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const rows = await asNobody(
    (db) =>
      db.$queryRaw<{ image: Uint8Array<ArrayBuffer> | null }[]>`
        select app.report_link_picture(${hashToken(token)}, ${storyId}::uuid) as image`,
  );
  return rows[0]?.image ?? undefined;
}
