import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { nextPath } from '@/lib/access/next-path';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { findSites } from '@/lib/records/site/find-sites.query';
import { siteChoiceInput } from '@/lib/records/site/site-choice.input';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { SitePages } from '@/lib/ui/sites/site-pages';
import { SiteSearchForm } from '@/lib/ui/sites/site-search';
import { withAnswers, withFormSite, withSite } from '@/lib/ui/sites/with-site';

export default async function ChooseSitePage({ searchParams }: PageProps<'/sites/choose'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const asked = nextPath(address.next);
  if (asked === undefined) return <NotThere />;
  const next = withAnswers(asked, address);
  const search = siteChoiceInput.parse(queryToObject(address));
  const found = await readAs(actor, (context) => findSites(context, search));
  const t = await getTranslations('sites.search');
  const filtering = search.siteFor === 'filter';
  const carried = filtering ? { next } : { next, siteFor: search.siteFor };
  return (
    <>
      <Heading text={t('heading')} />
      {filtering ? null : <p>{t('first')}</p>}
      <SiteSearchForm action="/sites/choose" search={search} carried={carried} />
      {found.sites.length === 0 ? (
        <p>{t('none', { name: search.siteName ?? '' })}</p>
      ) : (
        <ul className="due-lines">
          {found.sites.map((site) => (
            <li key={site.id}>
              <Link href={(filtering ? withSite(next, site.id) : withFormSite(next, site.id)) as Route}>
                {site.name}
              </Link>
              <span className="due-why quiet">{site.code}</span>
            </li>
          ))}
        </ul>
      )}
      <SitePages path="/sites/choose" search={search} found={found} carried={carried} />
      {filtering ? (
        <p>
          <Link href={withSite(next, undefined) as Route}>{t('all')}</Link>
        </p>
      ) : null}
    </>
  );
}
