import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { practiceFields } from '@/lib/ui/programme/practice-fields';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { recordPracticeAction } from '../actions';

export default async function NewPracticePage({ searchParams }: PageProps<'/programme/practices/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const found = await readAs(actor, (context) => listFormSites(context, { asked: address.siteId }));
  const site = await siteFirst(found, addressWith('/programme/practices/new', address, {}));
  return (
    <AddRecordForm
      list="practices"
      action={recordPracticeAction}
      sites={site.sites}
      fields={(days) => practiceFields({ kind: 'add', site }, days)}
      day="since"
    />
  );
}
