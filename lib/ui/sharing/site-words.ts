import { getTranslations } from 'next-intl/server';
import type { ShownSite } from '@/lib/records/sharing/shown-sites';

/** Says of a site what it shares: its name, that it is another site, or that it tells nothing. */
export async function loadSiteWords(): Promise<(site: ShownSite) => string> {
  const t = await getTranslations('sharing.shown');
  return (site) => {
    if (site.kind === 'named') return site.name;
    if (site.kind === 'left-out') return t('leftOut');
    return site.mark === null ? t('anonymous') : t('anonymousMarked', { mark: String(site.mark) });
  };
}
