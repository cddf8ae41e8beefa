import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { namedOptions } from '@/lib/ui/form/named-options';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';
import { Status } from '@/lib/ui/page/status';
import { loadSiteWords } from '@/lib/ui/sharing/site-words';
import { addressWith } from '@/lib/ui/table/address-with';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function TreatmentsPage({ searchParams }: PageProps<'/treatments'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = treatmentFilterInput.parse(address);
  const { runs, next, methods, sites } = await readAs(actor, async (context) => ({
    ...(await listTreatments(context, filter)),
    methods: (await listChoices(context)).methods,
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('treatments');
  const locale = await getLocale();
  const siteWords = await loadSiteWords();
  const without = (name: string) =>
    addressWith('/treatments', address, { [name]: undefined, after: undefined }) as Route;
  const site = sites.find((one) => one.id === filter.site);
  const method = methods.find((one) => one.id === filter.method);
  return (
    <>
      <Heading text={t('heading')} />
      <p>
        <ButtonLink href="/treatments/new">{t('new')}</ButtonLink>
      </p>
      <FilterForm
        action={'/treatments' as Route}
        fields={[
          {
            kind: 'select',
            name: 'site',
            label: t('columns.site'),
            optional: true,
            options: sites.map((one) => ({ value: one.id, label: one.name })),
          },
          {
            kind: 'select',
            name: 'method',
            label: t('columns.method'),
            optional: true,
            options: namedOptions(methods, actor.language),
          },
        ]}
        values={{ site: filter.site ?? '', method: filter.method ?? '' }}
        chips={[
          ...(site ? [{ label: site.name, without: without('site') }] : []),
          ...(method ? [{ label: method[actor.language], without: without('method') }] : []),
        ]}
      />
      {runs.length === 0 ? (
        <EmptyState text={t('empty')} />
      ) : (
        <DataTable
          caption={t('caption')}
          rows={runs}
          rowKey={(run) => run.id}
          columns={[
            {
              key: 'code',
              header: t('columns.code'),
              cell: (run) => <Link href={`/treatments/${run.id}`}>{run.code}</Link>,
            },
            { key: 'method', header: t('columns.method'), cell: (run) => run.method[actor.language] },
            { key: 'site', header: t('columns.site'), cell: (run) => siteWords(run.site) },
            {
              key: 'started',
              header: t('columns.started'),
              cell: (run) => formatInstant(run.startedAt, run.timeZone, locale),
            },
            {
              key: 'state',
              header: t('columns.state'),
              cell: (run) =>
                run.endedAt === null ? (
                  <Status tone="watch" word={t('state.running')} />
                ) : (
                  <Status tone="plain" word={t('state.ended')} />
                ),
            },
          ]}
        />
      )}
      <SaveRows tables={['treatments', 'treatment-readings']} address={address} />
      <Pager
        older={
          next === undefined ? undefined : (addressWith('/treatments', address, { after: next }) as Route)
        }
      />
    </>
  );
}
