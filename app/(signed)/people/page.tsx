import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listPeople } from '@/lib/records/person/list-people.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Status } from '@/lib/ui/page/status';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function PeoplePage() {
  const actor = await requireActor('coordinator');
  const people = await readAs(actor, listPeople);
  const t = await getTranslations('people');
  const words = await getTranslations('vocabulary.membershipRole');
  return (
    <>
      <Heading text={t('heading')} />
      <p>
        <ButtonLink href="/people/invite">{t('invite')}</ButtonLink>
      </p>
      <p>
        <Link href={'/people/invitations' as Route}>{t('invitations.link')}</Link>
      </p>
      <DataTable
        caption={t('caption')}
        rows={people}
        rowKey={(person) => person.membershipId}
        columns={[
          {
            key: 'name',
            header: t('columns.name'),
            cell: (person) =>
              person.name === '' ? (
                t('erased')
              ) : (
                <>
                  <Link href={`/people/${person.membershipId}`}>{person.name}</Link>
                  <span className="cell-reason">{person.email}</span>
                </>
              ),
          },
          {
            key: 'role',
            header: t('columns.roleAndSites'),
            roomy: true,
            cell: (person) => (
              <>
                {words(person.role)}
                <span className="cell-reason">{person.sites.map(({ name }) => name).join(', ')}</span>
              </>
            ),
          },
          {
            key: 'state',
            header: t('columns.state'),
            cell: (person) =>
              person.ended || person.disabled ? (
                <Status tone="plain" word={t('state.ended')} />
              ) : (
                <Status tone="good" word={t('state.active')} />
              ),
          },
        ]}
      />
    </>
  );
}
