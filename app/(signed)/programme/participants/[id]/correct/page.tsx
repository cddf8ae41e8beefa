import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { isId } from '@/lib/records/fields/id-field';
import { getParticipant } from '@/lib/records/participant/get-participant.query';
import { consentKinds } from '@/lib/records/participant/participant.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { participantFields } from '@/lib/ui/programme/participant-fields';
import { correctParticipantAction } from '../../actions';

export default async function CorrectParticipantPage({
  params,
}: PageProps<'/programme/participants/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  if (!isId(id)) return <NotThere />;
  const read = await readAs(actor, async (context) => ({
    participant: await getParticipant(context, id),
  }));
  const { participant } = read;
  if (!participant || participant.voided !== null || participant.erased) return <NotThere />;
  const t = await getTranslations('programme');
  const days = await recentDays(todayInZone(actor.networkTimeZone, new Date()));
  return (
    <RecordForm
      action={correctParticipantAction}
      heading={t('participants.correct')}
      fields={await participantFields({ kind: 'correct' }, days)}
      values={{
        id,
        revision: String(participant.revision),
        name: participant.name ?? '',
        consents: consentKinds.filter((kind) => participant.consents[kind] !== null),
        agreedOn__quick: days[0]?.value ?? '',
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
