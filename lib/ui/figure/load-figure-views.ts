import { getLocale, getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { formatInstant } from '../format/instant-text';
import { formatInterval } from '../format/interval-text';
import { formatNumber } from '../format/number-text';
import type { FigureView } from './figure-view';

/** Decimals of a figure by its unit; whole counts of people and sites have none. */
const digitsOf: Readonly<Record<ShownFigure['unit'], number>> = {
  percent: 1,
  kilograms: 1,
  'kilograms-per-square-metre': 2,
  'grams-per-log-year': 0,
  people: 0,
  sites: 0,
};

/** Makes the words of any figure in the reader's language; `timeZone` is the network's, for "data as of". */
export async function loadFigureViews(timeZone: string): Promise<(figure: ShownFigure) => FigureView> {
  const t = await getTranslations('figures');
  const common = await getTranslations('common.figure');
  const locale = await getLocale();

  const parts = (figure: ShownFigure): string => {
    if (figure.kind === 'cannot' || figure.method.code === 'sum') return '';
    const unit = figure.parts.unit === 'units' ? '' : '\u00a0g';
    return t('countOf', {
      numerator: `${formatNumber(figure.parts.numerator, locale)}${unit}`,
      denominator: `${formatNumber(figure.parts.denominator, locale)}${unit}`,
    });
  };

  const view = (figure: ShownFigure): Pick<FigureView, 'estimate' | 'unit' | 'interval' | 'reason'> => {
    if (figure.kind === 'cannot') {
      return {
        estimate: common('cannotCompute'),
        unit: '',
        interval: '',
        reason: t(`cannot.${figure.reason}`),
      };
    }
    if (figure.kind === 'counts') {
      return { estimate: parts(figure), unit: '', interval: '', reason: t(`noInterval.${figure.reason}`) };
    }
    const digits = digitsOf[figure.unit];
    const { interval } = figure;
    return {
      estimate: formatNumber(figure.value, locale, digits),
      unit: t(`unit.${figure.unit}`, { count: figure.value }),
      interval:
        interval.kind === 'interval' ? formatInterval(interval.low, interval.high, locale, digits) : '',
      reason:
        interval.kind === 'none' && interval.reason !== 'complete-count'
          ? t(`noInterval.${interval.reason}`)
          : '',
    };
  };

  return (figure) => ({
    kind: figure.kind,
    ...view(figure),
    size: (['batches', 'units', 'runs', 'sites'] as const).map((one) =>
      t(`size.${one}`, { count: figure.n[one] }),
    ),
    marks: figure.marks.map((mark) => t(`mark.${mark}`)),
    history: {
      method: t(`method.${figure.method.code}`),
      source: figure.method.source,
      clusteredBy: t(`clusteredBy.${figure.method.clusteredBy}`),
      parts: parts(figure),
      leftOut: figure.leftOut.map(({ reason, batches, units }) =>
        t('leftOutLine', { batches, units, reason: t(`leftOut.${reason}`) }),
      ),
      asOf: formatInstant(new Date(figure.asOf), timeZone, locale),
    },
  });
}
