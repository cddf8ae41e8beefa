import type { FigureView } from '../figure/figure-view';
import type { ChartRow } from './chart-row';

type Place = {
  readonly key: string;
  readonly label: string;
  readonly group?: string;
  readonly series?: number;
};

/** A chart's row from a figure's view; its `text` is what the table's cell says. */
export function toChartRow(place: Place, view: FigureView): ChartRow {
  const text = view.interval === '' ? view.estimate : `${view.estimate} (${view.interval})`;
  return { ...place, text, size: view.size[0] ?? '', ...view.plotted };
}
