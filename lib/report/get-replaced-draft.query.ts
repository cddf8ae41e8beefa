import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { funderReportContent } from './content/funder-report';
import { getReport, type ReportView } from './get-report.query';

/** A report that was built anew, and as it was before; for a coordinator. */
export async function getReplacedDraft(
  context: ReadContext,
  id: string,
): Promise<{ readonly report: ReportView; readonly before: ReportView } | undefined> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return undefined;
  const report = await getReport(context, id);
  const row = await db.report.findFirst({ where: { rebuilt: { some: { id } } } });
  if (!report || !row) return undefined;
  return { report, before: { ...report, content: funderReportContent.parse(row.content) } };
}
