import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getReport } from '@/lib/report/get-report.query';
import { NotThere } from '@/lib/ui/page/not-there';
import { DocumentView } from '@/lib/ui/report/document-view';
import { loadDocument } from '@/lib/ui/report/load-document';
import { ReportStanding } from '@/lib/ui/report/report-standing';
import { TakeAlong } from '@/lib/ui/report/take-along';
import { discardDraftAction, reviseReportAction } from '../actions';

export default async function ReportPage({ params, searchParams }: PageProps<'/reports/[id]'>) {
  const { id } = await params;
  const { late } = await searchParams;
  const actor = await requireActor();
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  if (!report) return <NotThere />;
  return (
    <DocumentView
      document={await loadDocument(actor, report)}
      pictureAt={(story) => `/reports/${id}/pictures/${story}`}
    >
      <ReportStanding
        report={report}
        coordinates={actor.role === 'coordinator'}
        late={late !== undefined}
        actions={{ revise: reviseReportAction, discard: discardDraftAction }}
      />
      <TakeAlong base={`/reports/${id}`} />
    </DocumentView>
  );
}
