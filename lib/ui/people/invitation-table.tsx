import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { InvitationView } from '@/lib/records/person/invitation-view';
import { formatInstant } from '../format/instant-text';
import { Link } from '../page/link';
import { Status } from '../page/status';
import { DataTable } from '../table/data-table';

type Props = { readonly invitations: readonly InvitationView[]; readonly timeZone: string };

/** Invitations that wait, each leading to where a new link is made. */
export async function InvitationTable({ invitations, timeZone }: Props) {
  const t = await getTranslations('people');
  const words = await getTranslations('vocabulary.membershipRole');
  const locale = await getLocale();
  return (
    <DataTable
      caption={t('invitations.caption')}
      rows={invitations}
      rowKey={({ id }) => id}
      columns={[
        {
          key: 'for',
          header: t('invitations.for'),
          cell: ({ id, name, email }) => (
            <>
              <Link href={`/people/invitations/${id}` as Route}>
                {name ?? email ?? t('invitations.unnamed')}
              </Link>
              <span className="cell-reason">{name === null ? '' : email}</span>
            </>
          ),
        },
        {
          key: 'role',
          header: t('columns.roleAndSites'),
          roomy: true,
          cell: ({ role, siteNames }) => (
            <>
              {words(role)}
              <span className="cell-reason">{siteNames.join(', ')}</span>
            </>
          ),
        },
        {
          key: 'until',
          header: t('invitations.until'),
          cell: ({ expired, expiresAt, linkless }) =>
            linkless ? (
              <Status tone="watch" word={t('invitations.linkless')} />
            ) : expired ? (
              <Status tone="plain" word={t('invitations.expired')} />
            ) : (
              formatInstant(expiresAt, timeZone, locale)
            ),
        },
      ]}
    />
  );
}
