import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { participantFields } from '@/lib/ui/programme/participant-fields';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { addParticipantAction } from '../actions';

export default async function NewParticipantPage({ searchParams }: PageProps<'/programme/participants/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const found = await readAs(actor, (context) => listFormSites(context, { asked: address.siteId }));
  const site = await siteFirst(found, addressWith('/programme/participants/new', address, {}));
  return (
    <AddRecordForm
      list="participants"
      action={addParticipantAction}
      sites={site.sites}
      fields={(days) => participantFields({ kind: 'add', site }, days)}
      day="agreedOn"
    />
  );
}
