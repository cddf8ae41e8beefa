import type { SitePart } from '@/lib/analysis/site-question/sites-answer';
import type { InsightWords } from './insight-words';

type Judged = Pick<SitePart, 'siteId' | 'verdict'>;

/** So many sites are named in a sentence. */
const mostNamed = 8;

/** Which sites can be told from a typical one, and how many cannot yet. */
export function sitesSentence(sites: readonly Judged[], { t, names, language }: InsightWords): string {
  const list = (verdict: Judged['verdict']) =>
    sites.filter((site) => site.verdict === verdict).map(({ siteId }) => names.siteName(siteId));
  const named = (all: readonly string[]) =>
    all.length > mostNamed + 1
      ? [...all.slice(0, mostNamed), t('sites.andMore', { count: all.length - mostNamed })]
      : all;
  const [more, fewer, alike] = [list('more'), list('fewer'), list('alike')];
  if (more.length + fewer.length === 0) return t('sites.none');
  const join = new Intl.ListFormat(language, { type: 'conjunction' });
  return [
    more.length === 0 ? '' : t('sites.more', { sites: join.format(named(more)) }),
    fewer.length === 0
      ? ''
      : t(more.length === 0 ? 'sites.fewerFirst' : 'sites.fewer', { sites: join.format(named(fewer)) }),
    alike.length === 0 ? '' : t('sites.others', { count: alike.length }),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
