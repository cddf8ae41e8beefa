import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { formatInstant } from '../format/instant-text';
import { formatInterval } from '../format/interval-text';
import { formatNumber } from '../format/number-text';
import type { FigureView } from './figure-view';
import type { FigureWords } from './figure-words';

/** Decimals of a figure by its unit; whole counts of people and sites have none. */
const digitsOf: Readonly<Record<ShownFigure['unit'], number>> = {
  percent: 1,
  kilograms: 1,
  'kilograms-per-square-metre': 2,
  'grams-per-log-year': 0,
  people: 0,
  sites: 0,
};

/** The sums a figure divides, "30 of 240", so that it can be checked by hand; '' for a plain sum. */
function partsText(figure: ShownFigure, { t, locale }: FigureWords): string {
  if (figure.kind === 'cannot') return '';
  if (figure.kind === 'figure' && figure.method.code === 'sum') return '';
  const { numerator, denominator, unit } = figure.parts;
  const mass = (grams: number) =>
    grams < 10_000
      ? `${formatNumber(grams, locale)}\u00a0g`
      : `${formatNumber(grams / 1000, locale, 1)}\u00a0kg`;
  const writings = {
    units: [formatNumber(numerator, locale), formatNumber(denominator, locale)],
    grams: [mass(numerator), mass(denominator)],
    'grams-and-square-centimetres': [
      mass(numerator),
      `${formatNumber(denominator / 10_000, locale, 2)}\u00a0m²`,
    ],
    'grams-and-log-days': [mass(numerator), `${formatNumber(denominator, locale)}\u00a0${t('logDays')}`],
  } as const;
  const [above, below] = writings[unit];
  return t('countOf', { numerator: above, denominator: below });
}

type Headline = Pick<FigureView, 'estimate' | 'unit' | 'interval' | 'reason'>;

function headline(figure: ShownFigure, words: FigureWords): Headline {
  const { t, common, locale } = words;
  const bare = { unit: '', interval: '' };
  if (figure.kind === 'cannot') {
    return { ...bare, estimate: common('cannotCompute'), reason: t(`cannot.${figure.reason}`) };
  }
  if (figure.kind === 'counts') {
    return { ...bare, estimate: partsText(figure, words), reason: t(`noInterval.${figure.reason}`) };
  }
  const digits = digitsOf[figure.unit];
  const { interval } = figure;
  const estimate = formatNumber(figure.value, locale, digits);
  const unit = t(`unit.${figure.unit}`, { count: figure.value });
  if (interval.kind === 'interval') {
    return {
      estimate,
      unit,
      interval: formatInterval(interval.low, interval.high, locale, digits),
      reason: '',
    };
  }
  const reason = interval.reason === 'complete-count' ? '' : t(`noInterval.${interval.reason}`);
  return { estimate, unit, interval: '', reason };
}

/** A figure in the reader's words and writing. */
export function toFigureView(figure: ShownFigure, words: FigureWords): FigureView {
  const { t, locale, timeZone } = words;
  const sizes = ['batches', 'units', 'runs', 'sites'] as const;
  return {
    kind: figure.kind,
    ...headline(figure, words),
    size: sizes
      .filter((one) => one === 'batches' || figure.n[one] > 0)
      .map((one) => t(`size.${one}`, { count: figure.n[one] })),
    marks: figure.marks.map((mark) => t(`mark.${mark}`)),
    history: {
      method: t(`method.${figure.method.code}`),
      source: figure.method.source,
      clusteredBy: t(`clusteredBy.${figure.method.clusteredBy}`),
      parts: partsText(figure, words),
      leftOut: figure.leftOut.map(({ reason, batches, units }) =>
        t('leftOutLine', { batches, units, reason: t(`leftOut.${reason}`) }),
      ),
      asOf: formatInstant(new Date(figure.asOf), timeZone, locale),
    },
  };
}
