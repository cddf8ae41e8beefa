import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { practiceKinds } from '@/lib/growing/programme-vocabulary';
import { listPractices } from '@/lib/records/practice/list-practices.query';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { Link } from '@/lib/ui/page/link';
import { ProgrammeList } from '@/lib/ui/programme/programme-list';

const path = '/programme/practices';

export default async function PracticesPage({ searchParams }: PageProps<'/programme/practices'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { practices, next, sites } = await readAs(actor, async (context) => ({
    ...(await listPractices(context, filter)),
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('programme.practices');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <ProgrammeList
      list="practices"
      address={address}
      filter={filter}
      sites={sites}
      own={{
        name: 'practice',
        label: t('columns.practice'),
        options: practiceKinds.map((value) => ({ value, label: words(`practiceKind.${value}`) })),
      }}
      rows={practices}
      next={next}
      columns={[
        {
          key: 'practice',
          header: t('columns.practice'),
          cell: ({ id, practice, description }) => (
            <Link href={`${path}/${id}` as Route}>
              {practice === 'other' && description !== null ? description : words(`practiceKind.${practice}`)}
            </Link>
          ),
        },
        { key: 'site', header: t('columns.site'), cell: ({ siteName }) => siteName },
        { key: 'since', header: t('columns.since'), cell: ({ since }) => formatDate(since, locale) },
        {
          key: 'until',
          header: t('columns.until'),
          cell: ({ until }) => (until === null ? t('goesOn') : formatDate(until, locale)),
        },
      ]}
    />
  );
}
