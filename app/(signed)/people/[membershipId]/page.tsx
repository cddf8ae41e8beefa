import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listPeople } from '@/lib/records/person/list-people.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { membershipFields } from '@/lib/ui/people/membership-fields';
import { changeMembershipAction } from './actions';

export default async function PersonPage({ params }: PageProps<'/people/[membershipId]'>) {
  const { membershipId } = await params;
  const actor = await requireActor('coordinator');
  const { person, sites } = await readAs(actor, async (context) => {
    const people = await listPeople(context);
    return {
      person: people.find((one) => one.membershipId === membershipId),
      sites: await listSites(context),
    };
  });
  if (!person) return <NotThere />;
  if (person.name === '') return <NotThere />;
  const t = await getTranslations('people');
  const leaving = await getTranslations('leaving');
  return (
    <RecordForm
      action={changeMembershipAction}
      heading={person.name}
      fields={await membershipFields(sites)}
      values={{
        id: person.membershipId,
        revision: String(person.revision),
        role: person.role,
        state: person.ended ? 'ended' : 'active',
        siteIds: person.sites.map((site) => site.id),
      }}
      submitLabel={t('submitChange')}
      words={await loadFormWords()}
      after={
        <>
          <Link href={`/history/${person.membershipId}`}>{t('history')}</Link>
          {person.personId === actor.personId ? null : (
            <Link href={`/people/${person.membershipId}/leave` as Route}>{leaving('asked.link')}</Link>
          )}
        </>
      }
    >
      <p>{person.email}</p>
    </RecordForm>
  );
}
