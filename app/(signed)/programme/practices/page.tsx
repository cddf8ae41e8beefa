import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { practiceKinds } from '@/lib/growing/programme-vocabulary';
import { listPractices } from '@/lib/records/practice/list-practices.query';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSites } from '@/lib/records/site/list-sites.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Pager } from '@/lib/ui/page/pager';
import { ProgrammeFilterForm } from '@/lib/ui/programme/programme-filter';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';

const path = '/programme/practices';

export default async function PracticesPage({ searchParams }: PageProps<'/programme/practices'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { practices, next, sites } = await readAs(actor, async (context) => ({
    ...(await listPractices(context, filter)),
    sites: await listSites(context),
  }));
  const t = await getTranslations('programme.practices');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
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
        own={{
          name: 'practice',
          label: t('columns.practice'),
          options: practiceKinds.map((value) => ({ value, label: words(`practiceKind.${value}`) })),
        }}
      />
      {practices.length === 0 ? (
        <EmptyState text={t('empty')} />
      ) : (
        <DataTable
          caption={t('caption')}
          rows={practices}
          rowKey={({ id }) => id}
          columns={[
            {
              key: 'practice',
              header: t('columns.practice'),
              cell: ({ id, practice, description }) => (
                <Link href={`${path}/${id}` as Route}>
                  {practice === 'other' && description !== null
                    ? description
                    : words(`practiceKind.${practice}`)}
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
      )}
      <Pager
        older={next === undefined ? undefined : (addressWith(path, address, { after: next }) as Route)}
      />
    </>
  );
}
