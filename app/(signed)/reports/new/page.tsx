import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { reportDayFields } from '@/lib/ui/report/report-day-fields';
import { buildReportAction } from '../actions';

const yearDays = 365;

export default async function NewReportPage() {
  const actor = await requireActor('coordinator');
  const t = await getTranslations('report');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={buildReportAction}
      heading={t('new')}
      fields={[
        { kind: 'text', name: 'title', label: sentenceCase(t('fields.title')) },
        {
          kind: 'text',
          name: 'programme',
          label: sentenceCase(t('fields.programme')),
          hint: t('programmeHint'),
          optional: true,
        },
        ...(await reportDayFields()),
        {
          kind: 'several',
          name: 'indicators',
          label: sentenceCase(t('fields.indicators')),
          options: reportIndicators.map((value) => ({ value, label: t(`indicators.${value}`) })),
        },
      ]}
      values={{
        title: t('defaultTitle', { network: actor.networkName }),
        ...dateValues('from', addDays(today, -yearDays)),
        ...dateValues('to', today),
        indicators: [...reportIndicators],
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    >
      <p>{t('newIntro')}</p>
    </RecordForm>
  );
}
