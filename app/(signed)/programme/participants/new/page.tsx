import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSites } from '@/lib/records/site/list-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { participantFields } from '@/lib/ui/programme/participant-fields';
import { addParticipantAction } from '../actions';

export default async function NewParticipantPage() {
  const actor = await requireActor('coordinator', 'member');
  const sites = await readAs(actor, listSites);
  return (
    <AddRecordForm
      list="participants"
      action={addParticipantAction}
      sites={sites}
      fields={(days) => participantFields({ kind: 'add', sites }, days)}
      day="agreedOn"
    />
  );
}
