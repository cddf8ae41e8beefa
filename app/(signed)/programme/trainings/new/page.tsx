import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listParticipantChoices } from '@/lib/records/participant/list-participant-choices.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { lastQuestions } from '@/lib/records/training/last-questions.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { trainingFields } from '@/lib/ui/programme/training-fields';
import { questionValues } from '@/lib/ui/programme/training-values';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { recordTrainingAction } from '../actions';

export default async function NewTrainingPage({ searchParams }: PageProps<'/programme/trainings/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const { found, people, questions } = await readAs(actor, async (context) => ({
    found: await listFormSites(context, { asked: address.siteId }),
    people: await listParticipantChoices(context),
    questions: await lastQuestions(context),
  }));
  const site = await siteFirst(found, addressWith('/programme/trainings/new', address, {}));
  return (
    <AddRecordForm
      list="trainings"
      action={recordTrainingAction}
      sites={site.sites}
      fields={(days) =>
        trainingFields({ form: { kind: 'add', site }, days, people, questions: questions.length })
      }
      day="heldOn"
      values={questionValues(questions)}
    />
  );
}
