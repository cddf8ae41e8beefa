import { getLocale } from 'next-intl/server';
import { reportFileName } from '@/lib/report/document/report-file-name';
import { noSuchReport, reportFileResponse } from '@/lib/report/report-file-response';
import { reportWorkbook } from '@/lib/report/workbook/report-workbook';
import { workbookWords } from '@/lib/ui/report/workbook-words';
import { loadReport } from '../load-report';

/** The report as a workbook, from the same document as its page. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/reports/[id]/xlsx'>,
): Promise<Response> {
  const { id } = await params;
  const loaded = await loadReport(id);
  if (!loaded) return noSuchReport();
  const workbook = await reportWorkbook(loaded.document, await workbookWords(await getLocale()));
  return reportFileResponse(workbook, reportFileName(loaded.report, 'xlsx'), 'xlsx');
}
