import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { todayInZone } from '@/lib/growing/calendar-date';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { withdrawConsentFields } from '@/lib/ui/report/withdraw-consent-fields';
import { loadCoordinatorsReport } from '../../../load-coordinators-report';
import { withdrawConsentAction } from '../../actions';

export default async function WithdrawConsentPage({
  params,
}: PageProps<'/reports/[id]/stories/[story]/withdraw'>) {
  const { id, story: storyId } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  const story = report?.stories.find((one) => one.id === storyId);
  if (!story || story.withdrawn?.part === 'story') return <NotThere />;
  const t = await getTranslations('stories');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={withdrawConsentAction}
      heading={t('withdrawHeading', { title: story.title })}
      fields={await withdrawConsentFields(story.picture !== undefined, await recentDays(today))}
      values={{ id: storyId, withdrawnOn__quick: today }}
      submitLabel={t('withdrawSubmit')}
      words={await loadFormWords()}
      tone="bad"
      after={<Link href={`/reports/${id}/stories` as Route}>{t('back')}</Link>}
    >
      <p>{t('withdrawIntro')}</p>
    </RecordForm>
  );
}
