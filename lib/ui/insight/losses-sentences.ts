import type { LossesAnswer, LossSource, VariationPart } from '@/lib/analysis/loss-question/losses-answer';
import type { InsightWords } from './insight-words';
import { percentText } from './percent-text';
import { isTold, type KnownShare, littleAtMost, mattersLittle, shareText } from './share-words';

/**
 * What can be told first: each source that matters, largest share first, then what matters little, what cannot be told, and
 * what is left.
 */
export function lossesSentences({ contamination }: LossesAnswer, words: InsightWords): string[] {
  const { t } = words;
  if (contamination.kind === 'cannot') return [t(`losses.cannot.${contamination.reason}`)];
  const sources = contamination.sources.filter(({ source }) => source !== 'rest');
  const told = sources.filter(isTold).sort((a, b) => b.percent.estimate - a.percent.estimate);
  const rest = contamination.sources.find(
    (source): source is KnownShare => source.source === 'rest' && isTold(source),
  );
  const little = sources.filter(mattersLittle);
  const untold = sources
    .filter((source) => !isTold(source) && !mattersLittle(source))
    .map(({ source }) => source);
  const noneTold =
    little.length === 0 ? 'noneTold' : untold.length === 0 ? 'noneMatters' : ('noneToldSome' as const);
  const { list, either } = joined(words);
  return [
    told.length === 0
      ? t(`losses.${noneTold}`)
      : t('losses.told', {
          sources: list(told.map(({ source }) => t(`losses.source.${source}`))),
          parts: list(told.map((share) => shareText(share, words))),
        }),
    little.length === 0
      ? ''
      : t('losses.little', {
          count: little.length,
          parts: list(
            little.map((share) =>
              t('losses.littlePart', {
                source: t(`losses.source.${share.source}`),
                high: littleAtMost(share, words),
              }),
            ),
          ),
        }),
    untold.length === 0
      ? ''
      : `${t('losses.untold', { sources: either(untold.map((source) => t(`losses.source.${source}`))) })} ${t(
          'losses.would',
          { what: list(untold.map((source) => t(`losses.wouldTell.${source}`))) },
        )}`,
    rest === undefined ? '' : t('losses.restTold', { percent: percentText(rest.percent.estimate, words) }),
  ].filter((sentence) => sentence !== '');
}

/** The same of the yield, in one sentence. */
export function yieldSentence(part: VariationPart, words: InsightWords): string {
  const { t } = words;
  if (part.kind === 'cannot') return t('losses.yieldCannot');
  const told = part.sources
    .filter(isTold)
    .filter(({ source }) => source !== 'rest')
    .sort((a, b) => b.percent.estimate - a.percent.estimate);
  const rest = part.sources.find(({ source }) => source === 'rest');
  const left = rest?.kind === 'share' ? percentText(rest.percent.estimate, words) : '–';
  if (told.length === 0) return t('losses.yieldNone', { rest: left });
  const parts = told.map((share) => shareText(share, words));
  const { list } = joined(words);
  const sources = list(told.map(({ source }) => t(`losses.source.${source}`)));
  return t('losses.yieldTold', { sources, parts: list(parts), rest: left });
}

/** Sources of which a first step is worth telling: those that matter, or while none can be told all that may. */
export function sourcesToActOn({ contamination }: LossesAnswer): LossSource[] {
  if (contamination.kind === 'cannot') return [];
  const told = contamination.sources
    .filter(isTold)
    .sort((a, b) => b.percent.estimate - a.percent.estimate)
    .map(({ source }) => source);
  const may = contamination.sources.filter((source) => !mattersLittle(source)).map(({ source }) => source);
  return told.length === 0 ? may : told;
}

function joined({ language }: InsightWords) {
  const and = new Intl.ListFormat(language, { type: 'conjunction' });
  const or = new Intl.ListFormat(language, { type: 'disjunction' });
  return {
    list: (parts: readonly string[]) => and.format(parts),
    either: (parts: readonly string[]) => or.format(parts),
  };
}
