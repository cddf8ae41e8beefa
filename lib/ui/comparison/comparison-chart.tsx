import { getTranslations } from 'next-intl/server';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { ExploreChart } from '../chart/explore-chart';
import { toChartRow } from '../chart/to-chart-row';
import { loadFigureViews } from '../figure/load-figure-views';

type Props = {
  readonly title: string;
  readonly reading: string;
  readonly rows: readonly ComparedRow[];
  readonly nameOf: (row: ComparedRow) => string;
  readonly figureOf: (row: ComparedRow) => ShownFigure;
  readonly timeZone: string;
  readonly massUnit: MassUnit;
};

/** Estimates and intervals of one column of the comparison, drawn on the server, to be explored by hand after. */
export async function ComparisonChart({ title, reading, rows, nameOf, figureOf, timeZone, massUnit }: Props) {
  const t = await getTranslations('common.chart');
  const view = await loadFigureViews(timeZone, massUnit);
  const chartRows = rows.map((row, index) => {
    return toChartRow({ key: nameOf(row), label: nameOf(row), series: index }, view(figureOf(row)));
  });
  const unit = rows.map((row) => view(figureOf(row)).unit).find((one) => one !== '') ?? '%';
  return (
    <>
      <DotIntervalChart title={title} reading={reading} unit={unit} rows={chartRows} />
      <ExploreChart rows={chartRows} unit={unit} label={t('explore')} loading={t('loading')} />
    </>
  );
}
