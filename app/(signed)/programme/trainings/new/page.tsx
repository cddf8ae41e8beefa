import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listParticipantChoices } from '@/lib/records/participant/list-participant-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { lastQuestions } from '@/lib/records/training/last-questions.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { trainingFields } from '@/lib/ui/programme/training-fields';
import { questionValues } from '@/lib/ui/programme/training-values';
import { recordTrainingAction } from '../actions';

export default async function NewTrainingPage() {
  const actor = await requireActor('coordinator', 'member');
  const read = await readAs(actor, async (context) => ({
    sites: await listSites(context),
    people: await listParticipantChoices(context),
    questions: await lastQuestions(context),
  }));
  const t = await getTranslations('programme');
  const { sites } = read;
  const [first] = sites;
  if (!first)
    return (
      <>
        <Heading text={t('trainings.new')} />
        <EmptyState text={t('noSites')} />
      </>
    );
  const today = todayInZone(first.timeZone, new Date());
  const days = await recentDays(today);
  return (
    <RecordForm
      action={recordTrainingAction}
      heading={t('trainings.new')}
      fields={
        await trainingFields({
          form: { kind: 'add', sites },
          days,
          people: read.people,
          questions: read.questions.length,
        })
      }
      values={{
        id: newId(),
        siteId: sites.length === 1 ? first.id : '',
        heldOn__quick: today,
        ...questionValues(read.questions),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
