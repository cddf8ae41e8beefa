import type { Hemisphere } from '@/lib/growing/hemisphere';
import { type Quarter, quarters } from '@/lib/growing/quarter';
import { quarterIn, seasonNames, seasons } from '@/lib/growing/season';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';

const nameOf = (season: Quarter, { t }: InsightWords) =>
  t(`next.seasonName.${seasonNames.find((name) => seasons[name] === season) ?? 'winter'}`);

/** "De diciembre a febrero" begins with a word, "December to February" with a name. */
function monthsInside(quarter: Quarter, { t, language }: InsightWords): string {
  const months = t(`quarter.${quarter}`);
  return language === 'es' ? months.toLocaleLowerCase('es') : months;
}

/** The name of a season ('1' winter) inside a sentence and the months in which a place has it. */
export function seasonAndMonths(season: string, half: Hemisphere, words: InsightWords) {
  const quarter = quarters.find((one) => one === season) ?? '1';
  return { name: nameOf(quarter, words), months: monthsInside(quarterIn(quarter, half), words) };
}

/** A season with the months in which the sites of a table had it: of both halves of the earth, both. */
export function seasonWithMonths(season: Quarter, had: readonly Quarter[], words: InsightWords): string {
  const months = had.map((quarter) => monthsInside(quarter, words)).join('; ');
  return words.t('treatments.seasonOf', { name: sentenceCase(nameOf(season, words)), months });
}

/** The season of a batch inside a sentence, or that it is the mix of all. */
export function seasonWords(season: string | null, half: Hemisphere, words: InsightWords): string {
  return season === null
    ? words.t('next.anySeason')
    : words.t('next.inSeason', seasonAndMonths(season, half, words));
}
