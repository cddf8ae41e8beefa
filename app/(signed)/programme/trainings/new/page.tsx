import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listParticipantChoices } from '@/lib/records/participant/list-participant-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { lastQuestions } from '@/lib/records/training/last-questions.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { trainingFields } from '@/lib/ui/programme/training-fields';
import { questionValues } from '@/lib/ui/programme/training-values';
import { recordTrainingAction } from '../actions';

export default async function NewTrainingPage() {
  const actor = await requireActor('coordinator', 'member');
  const { sites, people, questions } = await readAs(actor, async (context) => ({
    sites: await listSites(context),
    people: await listParticipantChoices(context),
    questions: await lastQuestions(context),
  }));
  return (
    <AddRecordForm
      list="trainings"
      action={recordTrainingAction}
      sites={sites}
      fields={(days) =>
        trainingFields({ form: { kind: 'add', sites }, days, people, questions: questions.length })
      }
      day="heldOn"
      values={questionValues(questions)}
    />
  );
}
