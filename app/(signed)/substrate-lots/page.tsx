import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { formatMass } from '@/lib/growing/format-quantity';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSubstrateLots } from '@/lib/records/substrate-lot/list-substrate-lots.query';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { namedOptions } from '@/lib/ui/form/named-options';
import { formatDate } from '@/lib/ui/format/date-text';
import { lotMoisture } from '@/lib/ui/lots/lot-moisture';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function SubstrateLotsPage({ searchParams }: PageProps<'/substrate-lots'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = lotFilterInput.parse(address);
  const { lots, next, materials } = await readAs(actor, async (context) => ({
    ...(await listSubstrateLots(context, filter)),
    materials: (await listChoices(context)).materials,
  }));
  const t = await getTranslations('lots');
  const locale = await getLocale();
  const moisture = await lotMoisture();
  const chosen = materials.find((material) => material.id === filter.of);
  const without = addressWith('/substrate-lots', address, { of: undefined, after: undefined }) as Route;
  return (
    <>
      <Heading text={t('substrateHeading')} />
      <p>
        <ButtonLink href="/substrate-lots/new">{t('newSubstrate')}</ButtonLink>
      </p>
      <FilterForm
        action={'/substrate-lots' as Route}
        fields={[
          {
            kind: 'select',
            name: 'of',
            label: t('columns.material'),
            optional: true,
            options: namedOptions(materials, actor.language),
          },
        ]}
        values={{ of: filter.of ?? '' }}
        chips={chosen ? [{ label: chosen[actor.language], without }] : []}
      />
      {lots.length === 0 ? (
        <EmptyState text={t('emptySubstrate')} />
      ) : (
        <DataTable
          caption={t('substrateCaption')}
          rows={lots}
          rowKey={(lot) => lot.id}
          columns={[
            {
              key: 'code',
              header: t('columns.code'),
              cell: (lot) => <Link href={`/substrate-lots/${lot.id}`}>{lot.code}</Link>,
            },
            { key: 'material', header: t('columns.material'), cell: (lot) => lot.material[actor.language] },
            {
              key: 'receivedOn',
              header: t('columns.receivedOn'),
              cell: (lot) => formatDate(lot.receivedOn, locale),
            },
            {
              key: 'received',
              header: t('columns.received'),
              numeric: true,
              cell: (lot) =>
                lot.receivedGrams === null ? '–' : formatMass(lot.receivedGrams, actor.massUnit, locale),
            },
            { key: 'moisture', header: t('columns.moisture'), cell: (lot) => moisture(lot) },
            { key: 'source', header: t('columns.source'), cell: (lot) => lot.sourceName ?? '–' },
          ]}
        />
      )}
      <SaveRows tables={['substrate-lots']} address={address} />
      <Pager
        older={
          next === undefined ? undefined : (addressWith('/substrate-lots', address, { after: next }) as Route)
        }
      />
    </>
  );
}
