import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { funderReportContent } from './funder-report';

/** One report with its stored content. */
export async function getReport({ db }: ReadContext, id: string) {
  const row = await db.report.findFirst({ where: { id, voidedAt: null } });
  if (!row) return undefined;
  return {
    id: row.id,
    title: row.title,
    published: row.publishedAt !== null,
    content: funderReportContent.parse(row.content),
  };
}

export type ReportView = NonNullable<Awaited<ReturnType<typeof getReport>>>;
