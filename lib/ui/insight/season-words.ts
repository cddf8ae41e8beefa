import { quarters } from '@/lib/growing/quarter';
import type { InsightWords } from './insight-words';

/** The season of a batch inside a sentence, or that it is the mix of all. */
export function seasonWords(season: string | null, { t, language }: InsightWords): string {
  const quarter = quarters.find((one) => one === season);
  if (quarter === undefined) return t('next.anySeason');
  const months = t(`quarter.${quarter}`);
  // "De diciembre a febrero" begins with a word, "December to February" with a name.
  return t('next.inSeason', { months: language === 'es' ? months.toLocaleLowerCase('es') : months });
}
