import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getReport } from '@/lib/report/get-report.query';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { DocumentView } from '@/lib/ui/report/document-view';
import { loadDocument } from '@/lib/ui/report/load-document';
import { publishReportAction } from '../actions';

export default async function ReportPage({ params }: PageProps<'/reports/[id]'>) {
  const { id } = await params;
  const actor = await requireActor();
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  if (!report) return <NotThere />;
  const t = await getTranslations('report');
  return (
    <DocumentView
      document={await loadDocument(actor, report)}
      pictureAt={(story) => `/reports/${id}/pictures/${story}`}
    >
      {report.publishedAt === undefined ? (
        <Notice tone="watch">
          <p>{t('draftNote')}</p>
          <form action={publishReportAction}>
            <input type="hidden" name="id" value={id} />
            <button type="submit" className="button button-action">
              {t('publish')}
            </button>
          </form>
        </Notice>
      ) : null}
    </DocumentView>
  );
}
