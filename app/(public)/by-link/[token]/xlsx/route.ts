import { reportFileName } from '@/lib/report/document/report-file-name';
import { reportFileResponse } from '@/lib/report/report-file-response';
import { reportWorkbook } from '@/lib/report/workbook/report-workbook';
import { workbookWords } from '@/lib/ui/report/workbook-words';
import { answerShared } from '../load-shared';

export async function GET(
  _request: Request,
  { params }: RouteContext<'/by-link/[token]/xlsx'>,
): Promise<Response> {
  const { token } = await params;
  return answerShared(token, 'xlsx', async ({ link: { report }, document, locale }) => {
    const workbook = await reportWorkbook(document, await workbookWords(locale));
    return reportFileResponse(workbook, reportFileName(report, 'xlsx'), 'xlsx');
  });
}
