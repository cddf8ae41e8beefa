import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { formatMass } from '@/lib/growing/format-quantity';
import { outletKinds } from '@/lib/growing/programme-vocabulary';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSales } from '@/lib/records/sale/list-sales.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { formatMoney } from '@/lib/ui/format/money-text';
import { Link } from '@/lib/ui/page/link';
import { ProgrammeList } from '@/lib/ui/programme/programme-list';

const path = '/programme/sales';

export default async function SalesPage({ searchParams }: PageProps<'/programme/sales'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { sales, next, sites } = await readAs(actor, async (context) => ({
    ...(await listSales(context, filter)),
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('programme.sales');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <ProgrammeList
      list="sales"
      address={address}
      filter={filter}
      sites={sites}
      own={{
        name: 'outlet',
        label: t('columns.outlet'),
        options: outletKinds.map((value) => ({ value, label: words(`outletKind.${value}`) })),
      }}
      rows={sales}
      next={next}
      columns={[
        {
          key: 'soldOn',
          header: t('columns.soldOn'),
          cell: ({ id, soldOn }) => <Link href={`${path}/${id}` as Route}>{formatDate(soldOn, locale)}</Link>,
        },
        {
          key: 'outlet',
          header: t('columns.outlet'),
          cell: ({ outlet }) => words(`outletKind.${outlet}`),
        },
        {
          key: 'mass',
          header: t('columns.mass'),
          numeric: true,
          cell: ({ grams }) => formatMass(grams, actor.massUnit, locale),
        },
        {
          key: 'price',
          header: t('columns.price'),
          numeric: true,
          cell: ({ price }) => formatMoney(price, locale),
        },
        { key: 'site', header: t('columns.site'), cell: ({ siteName }) => siteName },
      ]}
    />
  );
}
