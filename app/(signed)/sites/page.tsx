import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { findCountedSites } from '@/lib/records/site/find-counted-sites.query';
import { listLeftSites } from '@/lib/records/site/list-left-sites.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { SitePages } from '@/lib/ui/sites/site-pages';
import { SiteSearchForm } from '@/lib/ui/sites/site-search';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function SitesPage({ searchParams }: PageProps<'/sites'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const search = siteSearchInput.parse(queryToObject(address));
  const { found, left } = await readAs(actor, async (context) => ({
    found: await findCountedSites(context, search),
    left: await listLeftSites(context),
  }));
  const { sites } = found;
  const t = await getTranslations('sites');
  const finding = await getTranslations('sites.search');
  const words = await getTranslations('vocabulary.siteKind');
  const leaving = await getTranslations('leaving');
  return (
    <>
      <Heading text={t('heading')} />
      {actor.role === 'coordinator' ? (
        <p>
          <ButtonLink href="/sites/new">{t('add')}</ButtonLink>
        </p>
      ) : null}
      {found.pages > 1 || search.siteName !== null ? (
        <SiteSearchForm action="/sites" search={search} />
      ) : null}
      {sites.length === 0 && search.siteName !== null ? (
        <p>
          {finding('none', { name: search.siteName })} <Link href="/sites">{finding('all')}</Link>
        </p>
      ) : sites.length === 0 ? (
        <EmptyState text={actor.role === 'coordinator' ? t('empty') : t('emptyMember')} />
      ) : (
        <DataTable
          caption={t('caption')}
          rows={sites}
          rowKey={(site) => site.id}
          columns={[
            {
              key: 'name',
              header: t('columns.name'),
              cell: (site) => <Link href={`/sites/${site.id}`}>{site.name}</Link>,
            },
            { key: 'code', header: t('columns.code'), cell: (site) => site.code },
            { key: 'kind', header: t('columns.kind'), cell: (site) => words(site.kind) },
            { key: 'batches', header: t('columns.batches'), numeric: true, cell: (site) => site.batchCount },
          ]}
        />
      )}
      <SitePages path="/sites" search={search} found={found} />
      {left.length === 0 ? null : (
        <>
          <h2>{leaving('site.leftHeading')}</h2>
          <ul className="plain-list">
            {left.map((site) => (
              <li key={site.id}>
                <Link href={`/sites/${site.id}`}>{site.name}</Link>
                {`, ${leaving(`figures.${site.withdrawn ? 'withdrawn' : 'counted'}Short`)}`}
              </li>
            ))}
          </ul>
        </>
      )}
      <SaveRows tables={['sites']} address={{ siteName: search.siteName ?? undefined }} />
    </>
  );
}
