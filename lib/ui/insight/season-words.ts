import type { Hemisphere } from '@/lib/growing/hemisphere';
import { quarters } from '@/lib/growing/quarter';
import { quarterIn, seasonNames, seasons } from '@/lib/growing/season';
import type { InsightWords } from './insight-words';

/** The name of a season ('1' winter) inside a sentence and the months in which a place has it. */
export function seasonAndMonths(season: string, half: Hemisphere, { t, language }: InsightWords) {
  const quarter = quarters.find((one) => one === season) ?? '1';
  const months = t(`quarter.${quarterIn(quarter, half)}`);
  return {
    name: t(`next.seasonName.${seasonNames.find((name) => seasons[name] === quarter) ?? 'winter'}`),
    // "De diciembre a febrero" begins with a word, "December to February" with a name.
    months: language === 'es' ? months.toLocaleLowerCase('es') : months,
  };
}

/** The season of a batch inside a sentence, or that it is the mix of all. */
export function seasonWords(season: string | null, half: Hemisphere, words: InsightWords): string {
  return season === null
    ? words.t('next.anySeason')
    : words.t('next.inSeason', seasonAndMonths(season, half, words));
}
