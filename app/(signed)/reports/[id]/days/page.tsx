import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getReport } from '@/lib/report/get-report.query';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { reportDayFields } from '@/lib/ui/report/report-day-fields';
import { rebuildDraftAction } from '../../actions';

export default async function ReportDaysPage({ params }: PageProps<'/reports/[id]/days'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  if (!report || report.publishedAt !== undefined) return <NotThere />;
  const t = await getTranslations('report');
  const { from, to, baseline } = report.content;
  return (
    <RecordForm
      action={rebuildDraftAction}
      heading={t('daysHeading')}
      fields={[{ kind: 'hidden', name: 'id' }, ...(await reportDayFields())]}
      values={{
        id,
        ...dateValues('from', from),
        ...dateValues('to', to),
        ...(baseline
          ? { ...dateValues('baselineFrom', baseline.from), ...dateValues('baselineTo', baseline.to) }
          : {}),
      }}
      submitLabel={t('submitDays')}
      words={await loadFormWords()}
    >
      <p>{t('daysIntro', { title: report.title })}</p>
    </RecordForm>
  );
}
