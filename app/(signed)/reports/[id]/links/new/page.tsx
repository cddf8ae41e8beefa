import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWordsShownOnce } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { linkFields } from '@/lib/ui/report/link-fields';
import { loadCoordinatorsReport } from '../../load-coordinators-report';
import { makeLinkAction } from '../actions';

/** Long enough for a funder to read it, short enough that a forgotten link closes. */
const usualDays = 60;

export default async function NewLinkPage({ params }: PageProps<'/reports/[id]/links/new'>) {
  const { id } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  if (!report || report.publishedAt === undefined) return <NotThere />;
  const t = await getTranslations('links');
  const lastDay = addDays(todayInZone(actor.networkTimeZone, new Date()), usualDays);
  return (
    <RecordForm
      action={makeLinkAction}
      heading={t('addHeading')}
      fields={await linkFields()}
      values={{ reportId: id, language: actor.language, ...dateValues('lastDay', lastDay) }}
      submitLabel={t('submit')}
      words={await loadFormWordsShownOnce()}
      after={<Link href={`/reports/${id}/links` as Route}>{t('heading')}</Link>}
    >
      <p>{t('intro')}</p>
    </RecordForm>
  );
}
