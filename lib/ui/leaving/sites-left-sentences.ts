import type { SitesLeft } from '@/lib/analysis/production/read-sites-left';

type Words = (key: 'site.leftCounted' | 'site.leftWithdrawn', values: { count: number }) => string;

/** One sentence for sites that left and still count, one for those taken out of the sums; none where no site has left. */
export function sitesLeftSentences({ counted, withdrawn }: SitesLeft, words: Words): string[] {
  return [
    ...(counted > 0 ? [words('site.leftCounted', { count: counted })] : []),
    ...(withdrawn > 0 ? [words('site.leftWithdrawn', { count: withdrawn })] : []),
  ];
}
