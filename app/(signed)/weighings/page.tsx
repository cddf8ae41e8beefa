import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { Fragment } from 'react';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { listWeighings } from '@/lib/records/weighing/list-weighings.query';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';
import { loadWeighingWords } from '@/lib/ui/weighings/load-weighing-words';

export default async function WeighingsPage({ searchParams }: PageProps<'/weighings'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = weighingFilterInput.parse(address);
  const { weighings, next, sites } = await readAs(actor, async (context) => ({
    ...(await listWeighings(context, filter)),
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('weighings');
  const words = await loadWeighingWords(actor.massUnit);
  const without = (name: string) =>
    addressWith('/weighings', address, { [name]: undefined, after: undefined }) as Route;
  const siteName = sites.find((site) => site.id === filter.site)?.name;
  const chips = [
    ...(siteName === undefined ? [] : [{ label: siteName, without: without('site') }]),
    ...(filter.batch === null ? [] : [{ label: t('oneBatch'), without: without('batch') }]),
  ];
  return (
    <>
      <Heading text={t('heading')} />
      <p>
        <ButtonLink href="/weighings/new">{t('new')}</ButtonLink>
      </p>
      <FilterForm
        action={'/weighings' as Route}
        fields={[
          {
            kind: 'select',
            name: 'site',
            label: t('columns.site'),
            optional: true,
            options: sites.map((site) => ({ value: site.id, label: site.name })),
          },
        ]}
        values={{ site: filter.site ?? '' }}
        chips={chips}
      />
      {weighings.length === 0 ? (
        <EmptyState text={t('empty')} />
      ) : (
        <DataTable
          caption={t('caption')}
          rows={weighings}
          rowKey={(weighing) => weighing.id}
          columns={[
            {
              key: 'weighedOn',
              header: t('columns.weighedOn'),
              cell: (weighing) => (
                <Link href={`/weighings/${weighing.id}`}>{words.date(weighing.weighedOn)}</Link>
              ),
            },
            {
              key: 'fresh',
              header: t('columns.fresh'),
              numeric: true,
              cell: (weighing) => words.mass(weighing.freshGrams),
            },
            {
              key: 'batches',
              header: t('columns.batches'),
              cell: (weighing) =>
                weighing.lines.map((line, at) => (
                  <Fragment key={`${line.batchId} ${line.flush}`}>
                    {at === 0 ? null : ', '}
                    <span className="whitespace-nowrap">{line.batchCode}</span>
                  </Fragment>
                )),
            },
            { key: 'site', header: t('columns.site'), cell: (weighing) => weighing.siteName },
            {
              key: 'where',
              header: t('columns.where'),
              roomy: true,
              cell: (weighing) => words.where(weighing),
            },
          ]}
        />
      )}
      <SaveRows tables={['weighings', 'harvests']} address={address} />
      <Pager
        older={
          next === undefined ? undefined : (addressWith('/weighings', address, { after: next }) as Route)
        }
      />
    </>
  );
}
