import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { OpenAtSite, OpenCounts } from '@/lib/records/today/count-open.query';
import { Link } from '../page/link';

/** Sites that stand open; the rest is behind one press, or looked for by name where it is long. */
const [shownSites, foldedSites] = [20, 80];

type Props = { readonly counts: OpenCounts; readonly at: OpenAtSite | undefined };

/** For whoever sees to more batches than are looked through at once: what is open where, each site a press away. */
export async function OpenSites({ counts, at }: Props) {
  const t = await getTranslations('today.open');
  const { open, unlooked, sites, lookedThrough } = counts;
  const line = (site: OpenAtSite) => (
    <li key={site.siteId}>
      <Link href={`/today?site=${site.siteId}` as Route}>{site.siteName}</Link>
      <span className="due-why quiet">{t('atSite', { open: site.open, unlooked: site.unlooked })}</span>
    </li>
  );
  if (at !== undefined)
    return (
      <>
        <h2>{at.siteName}</h2>
        <p>{t('atSite', { open: at.open, unlooked: at.unlooked })}</p>
        {at.open > lookedThrough ? <p>{t('latestOnly', { most: lookedThrough })}</p> : null}
        <p>
          <Link href="/today">{t('allSites')}</Link>
        </p>
      </>
    );
  const [first, rest] = [sites.slice(0, shownSites), sites.slice(shownSites)];
  return (
    <section aria-labelledby="open-sites">
      <h2 id="open-sites">{t('heading')}</h2>
      <p>{t('total', { open, sites: sites.length, unlooked })}</p>
      <ul className="due-lines">{first.map(line)}</ul>
      {rest.length === 0 ? null : rest.length > foldedSites ? (
        <p>
          <Link href={'/sites/choose?next=/today' as Route}>{t('findSite', { count: rest.length })}</Link>
        </p>
      ) : (
        <details className="due-fold">
          <summary>{t('moreSites', { count: rest.length })}</summary>
          <ul className="due-lines">{rest.map(line)}</ul>
        </details>
      )}
    </section>
  );
}
