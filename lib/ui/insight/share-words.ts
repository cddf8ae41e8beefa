import type { SourceShare } from '@/lib/analysis/loss-question/losses-answer';
import type { InsightWords } from './insight-words';
import { percentAboveZero } from './percent-text';

export type KnownShare = Extract<SourceShare, { kind: 'share' }>;

type LittleShare = KnownShare & { readonly told: false };

export const isTold = (source: SourceShare): source is KnownShare => source.kind === 'share' && source.told;

/** A source that may not matter at all, and matters little where its share ends below so many of 100 parts. Our choice. */
export const littleBelow = 5;

export const mattersLittle = (source: SourceShare): source is LittleShare =>
  source.kind === 'share' && !source.told && source.percent.high < littleBelow;

/** The most that a source that matters little can be of 100 parts. */
export function littleAtMost({ percent }: LittleShare, words: InsightWords): string {
  return percentAboveZero(percent.high, words);
}

/**
 * The share of a source with its limits: one above zero is never written as zero, which would say that it may not
 * matter.
 */
export function shareText({ source, percent }: KnownShare, words: InsightWords): string {
  const { t } = words;
  return t('losses.part', {
    source: t(`losses.source.${source}`),
    percent: percentAboveZero(percent.estimate, words),
    low: percentAboveZero(percent.low, words),
    high: percentAboveZero(percent.high, words),
  });
}
