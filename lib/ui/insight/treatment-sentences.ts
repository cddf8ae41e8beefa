import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { StandingLoss, TreatmentsAnswer } from '@/lib/analysis/treatment-question/treatments-answer';
import type { RunStanding } from '@/lib/growing/window-margin';
import type { InsightWords } from './insight-words';
import { percentText } from './percent-text';

/** "24 in 100 (18–31)", or how many of how many where that is all there is to say. */
export function lossText(figure: ShownFigure, words: InsightWords): string {
  const { t, number, units } = words;
  if (figure.kind === 'cannot') return t('treatments.nothing');
  const { numerator, denominator } = figure.parts;
  if (figure.kind === 'counts')
    return t('treatments.counts', { found: number(numerator), of: number(denominator), units });
  const { value, interval } = figure;
  return interval.kind === 'none'
    ? t('treatments.plain', { value: percentText(value, words), units })
    : t('treatments.rate', {
        value: percentText(value, words),
        units,
        low: percentText(interval.low, words),
        high: percentText(interval.high, words),
      });
}

const of = (standings: readonly StandingLoss[], standing: RunStanding) =>
  standings.find((one) => one.standing === standing);

/** Of the runs that treated what was asked: how many did not hold and where, what their batches lost, and how far the site may be the reason. */
export function treatmentSentences(answer: TreatmentsAnswer, words: InsightWords): string[] {
  const { t, names, language } = words;
  const { judgedRuns, outsideRuns, unknownRuns, standings, difference, sitesWithBoth } = answer;
  if (judgedRuns === 0) return [t('treatments.none', { count: unknownRuns })];
  if (outsideRuns === 0) return [t('treatments.allHeld', { count: judgedRuns }), ...longer(answer, words)];
  const join = new Intl.ListFormat(language, { type: 'conjunction' });
  const sites = answer.sites.filter(({ outside }) => outside > 0);
  const siteIds = [...new Set(sites.map(({ siteId }) => siteId))];
  const named = join.format(siteIds.map((id) => names.siteName(id)).sort());
  const [outside, well] = [of(standings, 'outside'), of(standings, 'well')];
  const where =
    siteIds.length <= 3
      ? t('treatments.where', { count: outsideRuns, of: judgedRuns, sites: named })
      : t('treatments.whereMany', { count: outsideRuns, of: judgedRuns, sites: siteIds.length });
  const lost =
    outside === undefined
      ? t('treatments.noBatches')
      : well === undefined
        ? t('treatments.lostOnly', { outside: lossText(outside.loss, words) })
        : t('treatments.lost', {
            outside: lossText(outside.loss, words),
            well: lossText(well.loss, words),
          });
  return [
    where,
    lost,
    ...doubt(difference, sitesWithBoth, outside?.siteIds.length ?? 0, words),
    ...longer(answer, words),
  ];
}

function longer({ longRuns, sites }: TreatmentsAnswer, { t, names, language }: InsightWords): string[] {
  if (longRuns === 0) return [];
  const siteIds = [...new Set(sites.flatMap(({ siteId, long }) => (long > 0 ? [siteId] : [])))];
  if (siteIds.length > 3) return [t('treatments.longerMany', { count: longRuns, sites: siteIds.length })];
  const join = new Intl.ListFormat(language, { type: 'conjunction' });
  const named = join.format(siteIds.map((id) => names.siteName(id)).sort());
  return [t('treatments.longer', { count: longRuns, sites: named })];
}

function doubt(
  difference: ShownFigure | null,
  sitesWithBoth: number,
  sites: number,
  words: InsightWords,
): string[] {
  const { t, units } = words;
  if (difference?.kind !== 'figure' || difference.interval.kind !== 'interval') return [];
  const { value, interval } = difference;
  const tells = interval.low > 0 || interval.high < 0;
  const fewer = tells && value < 0;
  const limits = {
    low: percentText(fewer ? -interval.high : interval.low, words),
    high: percentText(fewer ? -interval.low : interval.high, words),
    units,
  };
  return [
    tells
      ? t('treatments.levelled', {
          points: percentText(Math.abs(value), words),
          way: fewer ? 'fewer' : 'more',
          ...limits,
        })
      : t('treatments.levelledCannot', limits),
    sitesWithBoth === 0
      ? t('treatments.sameSites', { count: sites })
      : tells
        ? ''
        : t('treatments.levelledWould'),
  ].filter((sentence) => sentence !== '');
}
