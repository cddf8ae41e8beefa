import { reportFileName } from '@/lib/report/document/report-file-name';
import { reportPackage } from '@/lib/report/package/report-package';
import { noSuchReport, reportFileResponse } from '@/lib/report/report-file-response';
import { loadReport } from '../load-report';

/** The report's data as one archive, from the same document as its page. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/reports/[id]/package'>,
): Promise<Response> {
  const { id } = await params;
  const loaded = await loadReport(id);
  if (!loaded) return noSuchReport();
  const { report, document } = loaded;
  const { version, publishedAt, content } = report;
  const { networkName, builtAt } = content;
  const archive = await reportPackage(document, { id, version, networkName, builtAt, publishedAt });
  return reportFileResponse(archive, reportFileName(report, 'zip'), 'zip');
}
