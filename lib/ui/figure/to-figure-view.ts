import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { formatMass, formatTotalMass, formatWithUnit } from '@/lib/growing/format-quantity';
import { formatInstant } from '../format/instant-text';
import { formatInterval } from '../format/interval-text';
import { formatArea } from '../format/length-text';
import { formatNumber } from '../format/number-text';
import type { FigureHistoryView, FigureView } from './figure-view';
import type { FigureWords } from './figure-words';
import { readerUnit } from './reader-unit';

/** Figures that divide nothing: a sum, and what a model expects of a batch that is not there yet. */
const undivided = ['sum', 'next-batch-loss', 'next-batch-yield'];

/** The sums a figure divides, "30 of 240", so that it can be checked by hand; '' where nothing is divided. */
function partsText(figure: ShownFigure, { t, locale, massUnit }: FigureWords): string {
  if (figure.kind === 'cannot') return '';
  if (figure.kind === 'figure' && undivided.includes(figure.method.code)) return '';
  const { numerator, denominator, unit } = figure.parts;
  const mass = (grams: number) =>
    grams < 10_000
      ? massUnit === 'kg'
        ? formatWithUnit(grams, 'g', locale, 0)
        : formatMass(grams, 'lb', locale)
      : formatTotalMass(grams, massUnit, locale);
  const writings = {
    units: [formatNumber(numerator, locale), formatNumber(denominator, locale)],
    grams: [mass(numerator), mass(denominator)],
    'grams-and-square-centimetres': [mass(numerator), formatArea(denominator, massUnit, locale)],
    'grams-and-log-days': [mass(numerator), `${formatNumber(denominator, locale)}\u00a0${t('logDays')}`],
  } as const;
  const [above, below] = writings[unit];
  return t('countOf', { numerator: above, denominator: below });
}

type Headline = Pick<FigureView, 'estimate' | 'unit' | 'interval' | 'reason' | 'plotted'>;

function headline(figure: ShownFigure, words: FigureWords): Headline {
  const { t, common, locale } = words;
  const bare = { unit: '', interval: '', plotted: undefined };
  if (figure.kind === 'cannot') {
    return { ...bare, estimate: common('cannotCompute'), reason: t(`cannot.${figure.reason}`) };
  }
  if (figure.kind === 'counts') {
    return { ...bare, estimate: partsText(figure, words), reason: t(`noInterval.${figure.reason}`) };
  }
  const { interval } = figure;
  const { unit, factor, digits } = readerUnit(figure.unit, words.massUnit);
  const value = figure.value * factor;
  const shown = { estimate: formatNumber(value, locale, digits), unit: t(`unit.${unit}`, { count: value }) };
  if (interval.kind === 'interval') {
    const [low, high] = [interval.low * factor, interval.high * factor];
    return {
      ...shown,
      interval: formatInterval(low, high, locale, digits),
      reason: '',
      plotted: { estimate: value, low, high },
    };
  }
  const reason = interval.reason === 'complete-count' ? '' : t(`noInterval.${interval.reason}`);
  return { ...shown, interval: '', reason, plotted: { estimate: value } };
}

function historyOf(figure: ShownFigure, words: FigureWords): FigureHistoryView {
  const { t, locale, timeZone } = words;
  return {
    method: t(`method.${figure.method.code}`),
    source: figure.method.source,
    clusteredBy: t(`clusteredBy.${figure.method.clusteredBy}`),
    parts: partsText(figure, words),
    leftOut: [
      ...figure.leftOut.map(({ reason, batches, units }) =>
        t('leftOutLine', { batches, units, reason: t(`leftOut.${reason}`) }),
      ),
      ...(figure.marks.includes('others-untold') ? [t('leftOutUntold')] : []),
    ],
    asOf: formatInstant(new Date(figure.asOf), timeZone, locale),
  };
}

function sizeOf(figure: ShownFigure, t: FigureWords['t']): readonly string[] {
  if (figure.n.batches === 0 && figure.marks.includes('others-untold')) return [t('size.untold')];
  return (['batches', 'units', 'runs', 'sites'] as const)
    .filter((one) => one === 'batches' || figure.n[one] > 0)
    .map((one) => t(`size.${one}`, { count: figure.n[one] }));
}

/** A figure in the reader's words and writing. A cell of a table shows neither sizes nor history: they are written when asked. */
export function toFigureView(figure: ShownFigure, words: FigureWords): FigureView {
  return {
    kind: figure.kind,
    ...headline(figure, words),
    marks: figure.marks.map((mark) => words.t(`mark.${mark}`)),
    get size() {
      return sizeOf(figure, words.t);
    },
    get history() {
      return historyOf(figure, words);
    },
  };
}
