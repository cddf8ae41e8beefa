import { getLocale } from 'next-intl/server';
import { readAs } from '@/lib/access/scoped-db';
import { reportFileName } from '@/lib/report/document/report-file-name';
import { paperSize } from '@/lib/report/pdf/paper-size';
import { reportPdf } from '@/lib/report/pdf/report-pdf';
import { noSuchReport, reportFileResponse } from '@/lib/report/report-file-response';
import { getStoryPicture } from '@/lib/report/story/get-story-picture.query';
import { printWords } from '@/lib/ui/report/print-words';
import { loadReport } from '../load-report';

/** The report as a tagged PDF, from the same document as its page. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/reports/[id]/pdf'>,
): Promise<Response> {
  const { id } = await params;
  const loaded = await loadReport(id);
  if (!loaded) return noSuchReport();
  const { actor, report, document } = loaded;
  const locale = await getLocale();
  const pictures = new Map<string, Uint8Array>();
  for (const { id: story, picture } of report.stories) {
    const image = picture && (await readAs(actor, (context) => getStoryPicture(context, story)));
    if (image) pictures.set(story, image);
  }
  const words = await printWords(locale);
  const pdf = await reportPdf({ report: document, pictures, paper: paperSize(locale), ...words });
  return reportFileResponse(pdf, reportFileName(report, 'pdf'), 'pdf');
}
