import type { InsightWords } from './insight-words';

/** Numbers of one sentence in one writing: whole where that says enough, one decimal for all where one is below 2. */
export function roundedTogether(
  values: readonly number[],
  { number }: Pick<InsightWords, 'number'>,
): string[] {
  const digits = values.some((value) => Math.abs(value) < 2) ? 1 : 0;
  return values.map((value) => number(value, digits));
}

/** The same, where a number above zero is never written as zero, which would say that there may be nothing. */
export function roundedAboveZero(values: readonly number[], words: InsightWords): string[] {
  const { t, number } = words;
  return roundedTogether(values, words).map((text, index) =>
    text === number(0, 1) && (values[index] ?? 0) > 0 ? t('under', { value: number(0.1, 1) }) : text,
  );
}
