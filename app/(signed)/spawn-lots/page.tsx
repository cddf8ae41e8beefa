import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { namedOptions } from '@/lib/ui/form/named-options';
import { formatDate } from '@/lib/ui/format/date-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function SpawnLotsPage({ searchParams }: PageProps<'/spawn-lots'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = lotFilterInput.parse(address);
  const { lots, next, species } = await readAs(actor, async (context) => ({
    ...(await listSpawnLots(context, filter)),
    species: (await listChoices(context)).species,
  }));
  const t = await getTranslations('lots');
  const words = await getTranslations('vocabulary.spawnForm');
  const locale = await getLocale();
  const chosen = species.find((one) => one.id === filter.of);
  const without = addressWith('/spawn-lots', address, { of: undefined, after: undefined }) as Route;
  return (
    <>
      <Heading text={t('spawnHeading')} />
      <p>
        <ButtonLink href="/spawn-lots/new">{t('newSpawn')}</ButtonLink>
      </p>
      <FilterForm
        action={'/spawn-lots' as Route}
        fields={[
          {
            kind: 'select',
            name: 'of',
            label: t('columns.species'),
            optional: true,
            options: namedOptions(species, actor.language),
          },
        ]}
        values={{ of: filter.of ?? '' }}
        chips={chosen ? [{ label: chosen[actor.language], without }] : []}
      />
      {lots.length === 0 ? (
        <EmptyState text={t('emptySpawn')} />
      ) : (
        <DataTable
          caption={t('spawnCaption')}
          rows={lots}
          rowKey={(lot) => lot.id}
          columns={[
            {
              key: 'code',
              header: t('columns.code'),
              cell: (lot) => <Link href={`/spawn-lots/${lot.id}`}>{lot.code}</Link>,
            },
            { key: 'species', header: t('columns.species'), cell: (lot) => lot.species[actor.language] },
            { key: 'strain', header: t('columns.strain'), cell: (lot) => lot.strain ?? '–' },
            { key: 'form', header: t('columns.form'), cell: (lot) => words(lot.form) },
            { key: 'maker', header: t('columns.maker'), cell: (lot) => lot.maker ?? '–' },
            {
              key: 'received',
              header: t('columns.receivedOn'),
              cell: (lot) => (lot.receivedOn === null ? '–' : formatDate(lot.receivedOn, locale)),
            },
            {
              key: 'generation',
              header: t('columns.generation'),
              numeric: true,
              cell: (lot) => lot.generation ?? '–',
            },
          ]}
        />
      )}
      <SaveRows tables={['spawn-lots']} address={address} />
      <Pager
        older={
          next === undefined ? undefined : (addressWith('/spawn-lots', address, { after: next }) as Route)
        }
      />
    </>
  );
}
