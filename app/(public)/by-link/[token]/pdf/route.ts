import { reportFileName } from '@/lib/report/document/report-file-name';
import { linkPicture } from '@/lib/report/link/open-link';
import { paperSize } from '@/lib/report/pdf/paper-size';
import { reportPdf } from '@/lib/report/pdf/report-pdf';
import { reportFileResponse } from '@/lib/report/report-file-response';
import { printWords } from '@/lib/ui/report/print-words';
import { answerShared } from '../load-shared';

export async function GET(
  _request: Request,
  { params }: RouteContext<'/by-link/[token]/pdf'>,
): Promise<Response> {
  const { token } = await params;
  return answerShared(token, 'pdf', async ({ link: { report }, document, locale }) => {
    const pictures = new Map<string, Uint8Array>();
    for (const { id, picture } of report.stories) {
      const image = picture && (await linkPicture(token, id));
      if (image) pictures.set(id, image);
    }
    const words = await printWords(locale);
    const pdf = await reportPdf({ report: document, pictures, paper: paperSize(locale), ...words });
    return reportFileResponse(pdf, reportFileName(report, 'pdf'), 'pdf');
  });
}
