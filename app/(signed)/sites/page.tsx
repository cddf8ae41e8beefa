import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { listLeftSites } from '@/lib/records/site/list-left-sites.query';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function SitesPage() {
  const actor = await requireActor('coordinator', 'member');
  const { sites, left } = await readAs(actor, async (context) => ({
    sites: await listCountedSites(context),
    left: await listLeftSites(context),
  }));
  const t = await getTranslations('sites');
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
      {sites.length === 0 ? (
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
      <SaveRows tables={['sites']} address={{}} />
    </>
  );
}
