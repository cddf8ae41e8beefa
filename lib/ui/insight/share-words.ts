import type { SourceShare } from '@/lib/analysis/loss-question/losses-answer';
import type { InsightWords } from './insight-words';
import { roundedTogether } from './rounded-together';

export type KnownShare = Extract<SourceShare, { kind: 'share' }>;

export const isTold = (source: SourceShare): source is KnownShare => source.kind === 'share' && source.told;

/**
 * The share of a source with its limits, as precise as "it matters" needs: a limit above zero is never written as zero,
 * which would say that it may not matter.
 */
export function shareText({ source, percent }: KnownShare, words: InsightWords): string {
  const { t, number } = words;
  const values = [percent.estimate, percent.low, percent.high];
  const nothing = number(0, 1);
  const [estimate = '', low = '', high = ''] = roundedTogether(values, words).map((text, index) =>
    text === nothing && (values[index] ?? 0) > 0 ? t('losses.under', { value: number(0.1, 1) }) : text,
  );
  return t('losses.part', { source: t(`losses.source.${source}`), percent: estimate, low, high });
}
