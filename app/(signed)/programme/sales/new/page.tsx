import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getMoney } from '@/lib/records/settings/get-money.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { saleFields } from '@/lib/ui/programme/sale-fields';
import { recordSaleAction } from '../actions';

export default async function NewSalePage() {
  const actor = await requireActor('coordinator', 'member');
  const { sites, money } = await readAs(actor, async (context) => ({
    sites: await listSites(context),
    money: await getMoney(context),
  }));
  const { massUnit } = actor;
  const currency = money?.currency ?? '';
  return (
    <AddRecordForm
      list="sales"
      action={recordSaleAction}
      sites={sites}
      fields={(days) => saleFields({ form: { kind: 'add', sites }, days, massUnit, currency })}
      day="soldOn"
    />
  );
}
