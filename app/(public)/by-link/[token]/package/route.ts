import { reportFileName } from '@/lib/report/document/report-file-name';
import { reportPackage } from '@/lib/report/package/report-package';
import { reportFileResponse } from '@/lib/report/report-file-response';
import { answerShared } from '../load-shared';

export async function GET(
  _request: Request,
  { params }: RouteContext<'/by-link/[token]/package'>,
): Promise<Response> {
  const { token } = await params;
  return answerShared(token, 'package', async ({ link: { report }, document }) => {
    const { id, version, publishedAt, content } = report;
    const { networkName, builtAt } = content;
    const archive = await reportPackage(document, { id, version, networkName, builtAt, publishedAt });
    return reportFileResponse(archive, reportFileName(report, 'zip'), 'zip');
  });
}
