import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getMoney } from '@/lib/records/settings/get-money.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { AddRecordForm } from '@/lib/ui/programme/add-record-form';
import { saleFields } from '@/lib/ui/programme/sale-fields';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { recordSaleAction } from '../actions';

export default async function NewSalePage({ searchParams }: PageProps<'/programme/sales/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const { found, money } = await readAs(actor, async (context) => ({
    found: await listFormSites(context, { asked: address.siteId }),
    money: await getMoney(context),
  }));
  const { massUnit } = actor;
  const currency = money?.currency ?? '';
  const site = await siteFirst(found, addressWith('/programme/sales/new', address, {}));
  return (
    <AddRecordForm
      list="sales"
      action={recordSaleAction}
      sites={site.sites}
      fields={(days) => saleFields({ form: { kind: 'add', site }, days, massUnit, currency })}
      day="soldOn"
    />
  );
}
