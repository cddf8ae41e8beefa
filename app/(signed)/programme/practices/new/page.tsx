import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSites } from '@/lib/records/site/list-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { practiceFields } from '@/lib/ui/programme/practice-fields';
import { recordPracticeAction } from '../actions';

export default async function NewPracticePage() {
  const actor = await requireActor('coordinator', 'member');
  const sites = await readAs(actor, listSites);
  return (
    <AddRecordForm
      list="practices"
      action={recordPracticeAction}
      sites={sites}
      fields={(days) => practiceFields({ kind: 'add', sites }, days)}
      day="since"
    />
  );
}
