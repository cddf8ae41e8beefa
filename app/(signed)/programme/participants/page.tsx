import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { listParticipants } from '@/lib/records/participant/list-participants.query';
import { consentKinds } from '@/lib/records/participant/participant.input';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { Link } from '@/lib/ui/page/link';
import { ProgrammeList } from '@/lib/ui/programme/programme-list';

const path = '/programme/participants';

export default async function ParticipantsPage({ searchParams }: PageProps<'/programme/participants'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { participants, next, sites } = await readAs(actor, async (context) => ({
    ...(await listParticipants(context, filter)),
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('programme.participants');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const list = new Intl.ListFormat(locale, { type: 'unit' });
  return (
    <ProgrammeList
      list="participants"
      address={address}
      filter={filter}
      sites={sites}
      own={{ name: 'name', label: t('columns.name') }}
      rows={participants}
      next={next}
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
          roomy: true,
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
  );
}
