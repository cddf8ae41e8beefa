import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { isId } from '@/lib/records/fields/id-field';
import { listParticipantChoices } from '@/lib/records/participant/list-participant-choices.query';
import { getTraining } from '@/lib/records/training/get-training.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { trainingFields } from '@/lib/ui/programme/training-fields';
import { trainingValues } from '@/lib/ui/programme/training-values';
import { correctTrainingAction } from '../../actions';

export default async function CorrectTrainingPage({
  params,
}: PageProps<'/programme/trainings/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  if (!isId(id)) return <NotThere />;
  const read = await readAs(actor, async (context) => ({
    training: await getTraining(context, id),
    people: await listParticipantChoices(context),
  }));
  const { training } = read;
  if (!training || training.voided !== null) return <NotThere />;
  const t = await getTranslations('programme');
  const days = await recentDays(todayInZone(actor.networkTimeZone, new Date()));
  return (
    <RecordForm
      action={correctTrainingAction}
      heading={t('trainings.correct')}
      fields={
        await trainingFields({
          form: { kind: 'correct' },
          days,
          people: read.people,
          questions: training.questions.length,
        })
      }
      values={trainingValues(training)}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
