import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { DueLine } from '@/lib/records/today/due-line';
import { Link } from '../page/link';

type Props = { readonly lines: readonly DueLine[]; readonly chosen: string | undefined };

/** The sites that have something due, by name, for somebody who looks after several. */
export async function SiteChips({ lines, chosen }: Props) {
  const t = await getTranslations('today');
  const sites = new Map(lines.map(({ siteId, siteName }) => [siteId, siteName]));
  if (sites.size < 2) return null;
  const byName = [...sites].sort(([, a], [, b]) => a.localeCompare(b));
  return (
    <details className="due-fold" open={chosen !== undefined}>
      <summary>{chosen === undefined ? t('filterLabel') : (sites.get(chosen) ?? t('filterLabel'))}</summary>
      <ul className="plain-list due-sites">
        <li>
          <Link href="/today" aria-current={chosen === undefined ? 'true' : undefined}>
            {t('allSites')}
          </Link>
        </li>
        {byName.map(([id, site]) => (
          <li key={id}>
            <Link href={`/today?site=${id}` as Route} aria-current={id === chosen ? 'true' : undefined}>
              {t('atSite', { site, count: lines.filter(({ siteId }) => siteId === id).length })}
            </Link>
          </li>
        ))}
      </ul>
    </details>
  );
}
