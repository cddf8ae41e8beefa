import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listPhotosToChoose } from '@/lib/report/story/list-photos-to-choose.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { storyFields } from '@/lib/ui/report/story-fields';
import { loadCoordinatorsReport } from '../../load-coordinators-report';
import { addStoryAction } from '../actions';

export default async function NewStoryPage({ params }: PageProps<'/reports/[id]/stories/new'>) {
  const { id } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  if (!report || report.publishedAt !== undefined) return <NotThere />;
  const t = await getTranslations('stories');
  const timeZone = actor.networkTimeZone;
  return (
    <RecordForm
      action={addStoryAction}
      heading={t('addHeading')}
      fields={
        await storyFields({
          photos: await readAs(actor, listPhotosToChoose),
          days: await recentDays(todayInZone(timeZone, new Date())),
          timeZone,
        })
      }
      values={{ id: newId(), reportId: id, photoId: '' }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
      after={<Link href={`/reports/${id}/stories` as Route}>{t('back')}</Link>}
    >
      <p>{t('addIntro')}</p>
    </RecordForm>
  );
}
