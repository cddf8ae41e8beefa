import { getTranslations } from 'next-intl/server';
import type { SitesLeft } from '@/lib/analysis/production/read-sites-left';
import { sitesLeftSentences } from './sites-left-sentences';

/** Beside sums of the network: how many sites have left it, and whether their records are in the sums. */
export async function SitesLeftNote({ left }: { readonly left: SitesLeft }) {
  const sentences = sitesLeftSentences(left, await getTranslations('leaving'));
  return sentences.length === 0 ? null : <p className="quiet">{sentences.join(' ')}</p>;
}
