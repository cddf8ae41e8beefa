import type { InsightWords } from './insight-words';

/** A percentage or points of it in a sentence, with the one decimal of the tables and charts of its page. */
export function percentText(value: number, { number }: Pick<InsightWords, 'number'>): string {
  return number(value, 1);
}

/** The same, where a number above zero is never written as zero, which would say that there may be nothing. */
export function percentAboveZero(value: number, words: InsightWords): string {
  const { t, number } = words;
  return value > 0 && percentText(value, words) === number(0, 1)
    ? t('under', { value: number(0.1, 1) })
    : percentText(value, words);
}
