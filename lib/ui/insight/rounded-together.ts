import type { InsightWords } from './insight-words';

/** Numbers of one sentence in one writing: whole where that says enough, one decimal for all where one is below 2. */
export function roundedTogether(
  values: readonly number[],
  { number }: Pick<InsightWords, 'number'>,
): string[] {
  const digits = values.some((value) => Math.abs(value) < 2) ? 1 : 0;
  return values.map((value) => number(value, digits));
}
