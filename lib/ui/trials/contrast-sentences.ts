import { getLocale, getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { TrialResultContent } from '@/lib/report/trial/trial-result-content';
import { formatNumber } from '../format/number-text';
import { sentenceCase } from '../format/sentence-case';

/** What the deciding comparison says of each arm against the first one, a sentence an arm. */
export async function contrastSentences({ answer, arms, outcome }: TrialResultContent): Promise<string[]> {
  const t = await getTranslations('trials.result');
  const locale = await getLocale();
  // With the one decimal of the table below it.
  const rounded = (value: number) => formatNumber(value, locale, 1);
  const first = arms[0]?.label ?? '–';
  return answer.asDrawn.contrasts.map(({ armId, points, verdict }) => {
    const arm = arms.find(({ id }) => id === armId)?.label ?? '–';
    const figure = points as ShownFigure;
    if (figure.kind !== 'figure' || figure.interval.kind !== 'interval')
      return sentenceCase(t('cannot', { arm, first }));
    const { low, high } = figure.interval;
    if (verdict === 'cannot-tell')
      return sentenceCase(t('cannotTell', { arm, first, low: rounded(low), high: rounded(high) }));
    const ends = verdict === 'more' ? [low, high] : [-high, -low];
    return sentenceCase(
      t(`${verdict}.${outcome}`, {
        arm,
        first,
        points: rounded(Math.abs(figure.value)),
        low: rounded(ends[0] ?? low),
        high: rounded(ends[1] ?? high),
      }),
    );
  });
}
