import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { FigureView } from '../figure/figure-view';
import type { ChartRow } from './chart-row';

type Place = {
  readonly key: string;
  readonly label: string;
  readonly group?: string;
  readonly series?: number;
};

/** A chart's row from a figure and its view; its `text` is what the table's cell says. */
export function toChartRow(place: Place, figure: ShownFigure, view: FigureView): ChartRow {
  const text = view.interval === '' ? view.estimate : `${view.estimate} (${view.interval})`;
  const row: ChartRow = { ...place, text, size: view.size[0] ?? '' };
  if (figure.kind !== 'figure') return row;
  return figure.interval.kind === 'interval'
    ? { ...row, estimate: figure.value, low: figure.interval.low, high: figure.interval.high }
    : { ...row, estimate: figure.value };
}
