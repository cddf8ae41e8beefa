import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { toldChanges } from '@/lib/report/document/told-changes';
import { getReport } from '@/lib/report/get-report.query';
import { previewChanges } from '@/lib/report/preview-changes.query';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { ChangesView } from '@/lib/ui/report/changes-view';
import { loadDocument } from '@/lib/ui/report/load-document';

export default async function ReportChangesPage({ params }: PageProps<'/reports/[id]/changes'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const [report, changes] = isId(id)
    ? await readAs(actor, async (context) => [
        await getReport(context, id),
        await previewChanges(context, id, new Date()),
      ])
    : [undefined, undefined];
  if (!report || !changes) return <NotThere />;
  const t = await getTranslations('report');
  const { figures, protectedThen } = toldChanges(
    await loadDocument(actor, report),
    await loadDocument(actor, { ...report, content: changes.content }),
  );
  return (
    <>
      <Heading text={t('sinceHeading')} />
      <p className="lead">
        {figures.length === 0 ? t('sinceNone') : t('sinceSome', { count: figures.length })}
      </p>
      <p>{t('sinceIntro')}</p>
      {report.content.residuesLeftOut === undefined && report.content.indicators.includes('residues') ? (
        <p>{t('sinceResidues')}</p>
      ) : null}
      {protectedThen === 0 ? null : <p>{t('sinceProtected', { count: protectedThen })}</p>}
      <p>
        <Link href={`/reports/${id}`}>{report.title}</Link>
      </p>
      {figures.length === 0 ? null : (
        <ChangesView figures={figures} changes={changes} massUnit={actor.massUnit} />
      )}
    </>
  );
}
