import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { listParticipants } from '@/lib/records/participant/list-participants.query';
import { consentKinds } from '@/lib/records/participant/participant.input';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSites } from '@/lib/records/site/list-sites.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Pager } from '@/lib/ui/page/pager';
import { ProgrammeFilterForm } from '@/lib/ui/programme/programme-filter';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';

const path = '/programme/participants';

export default async function ParticipantsPage({ searchParams }: PageProps<'/programme/participants'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { participants, next, sites } = await readAs(actor, async (context) => ({
    ...(await listParticipants(context, filter)),
    sites: await listSites(context),
  }));
  const t = await getTranslations('programme.participants');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const list = new Intl.ListFormat(locale, { type: 'unit' });
  return (
    <>
      <Heading text={t('heading')} />
      <p>
        <ButtonLink href={`${path}/new` as Route}>{t('new')}</ButtonLink>
      </p>
      <ProgrammeFilterForm
        path={path}
        address={address}
        filter={filter}
        sites={sites}
        own={{ name: 'name', label: t('columns.name') }}
      />
      {participants.length === 0 ? (
        <EmptyState text={t('empty')} />
      ) : (
        <DataTable
          caption={t('caption')}
          rows={participants}
          rowKey={({ id }) => id}
          columns={[
            {
              key: 'name',
              header: t('columns.name'),
              cell: ({ id, name }) => <Link href={`${path}/${id}` as Route}>{name ?? t('erasedName')}</Link>,
            },
            { key: 'site', header: t('columns.site'), cell: ({ siteName }) => siteName },
            {
              key: 'consents',
              header: t('columns.consents'),
              cell: ({ consents }) => {
                const given = consentKinds.filter((kind) => consents[kind] !== null);
                return given.length === 0
                  ? t('noConsent')
                  : list.format(given.map((kind) => words(`consentKind.${kind}`)));
              },
            },
            {
              key: 'trainings',
              header: t('columns.trainings'),
              numeric: true,
              cell: ({ trainings }) => trainings,
            },
          ]}
        />
      )}
      <Pager
        older={next === undefined ? undefined : (addressWith(path, address, { after: next }) as Route)}
      />
    </>
  );
}
