import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
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
          name: 'from',
          label: sentenceCase(t('fields.from')),
          hint: t('dateHint'),
          width: 'short',
        },
        {
          kind: 'text',
          name: 'to',
          label: sentenceCase(t('fields.to')),
          hint: t('dateHint'),
          width: 'short',
        },
      ]}
      values={{
        title: t('defaultTitle', { network: actor.networkName }),
        from: addDays(today, -yearDays),
        to: today,
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    >
      <p>{t('newIntro')}</p>
    </RecordForm>
  );
}
