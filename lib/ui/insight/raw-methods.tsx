import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import type { InsightWords } from './insight-words';

/** The figures as recorded, which need no fit: shown while the adjusted ones are on their way. */
export function RawMethods({ rows, words }: { rows: readonly ComparedRow[]; words: InsightWords }) {
  const { t, names, view } = words;
  return (
    <DotIntervalChart
      title={t('methods.rawHeading')}
      reading={t('methods.chart')}
      unit="%"
      rows={names.sorted(rows).map((row, series) => {
        const label = names.methodName(row.method);
        return toChartRow({ key: label, label, series }, view(row.contamination));
      })}
    />
  );
}
