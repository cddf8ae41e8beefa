import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { documentChanges } from '@/lib/report/document/document-changes';
import { getReplacedDraft } from '@/lib/report/get-replaced-draft.query';
import type { ReportView } from '@/lib/report/get-report.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { FiguresThatDiffer } from '@/lib/ui/report/figures-that-differ';
import { loadDocument } from '@/lib/ui/report/load-document';

export default async function RebuiltReportPage({ params }: PageProps<'/reports/[id]/rebuilt'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const found = isId(id) ? await readAs(actor, (context) => getReplacedDraft(context, id)) : undefined;
  if (!found) return <NotThere />;
  const { report, before } = found;
  const t = await getTranslations('report');
  const locale = await getLocale();
  const figures = documentChanges(await loadDocument(actor, before), await loadDocument(actor, report));
  const days = ({ content: { from, to, baseline } }: ReportView) => {
    const period = t('period', { from: formatDate(from, locale), to: formatDate(to, locale) });
    return baseline === undefined
      ? period
      : t('periodBeside', {
          period,
          baseline: t('period', {
            from: formatDate(baseline.from, locale),
            to: formatDate(baseline.to, locale),
          }),
        });
  };
  return (
    <>
      <Heading text={t('rebuiltHeading')} />
      <p className="lead">{t('rebuiltLead', { count: figures.length })}</p>
      <p>{t('rebuiltDays', { before: days(before), now: days(report) })}</p>
      <p>
        <Link href={`/reports/${id}` as Route} className="button button-action">
          {t('rebuiltOpen')}
        </Link>
      </p>
      {figures.length === 0 ? null : (
        <FiguresThatDiffer figures={figures} then={t('columns.before')} today={t('columns.anew')} />
      )}
    </>
  );
}
