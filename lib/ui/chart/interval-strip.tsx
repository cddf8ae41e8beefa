import type { ChartRow } from './chart-row';
import { markShape, seriesClass } from './mark-shape';
import type { RateScale } from './rate-scale';

/** One row's drawing. Places are percentages, so it is drawn at whatever width it is read at and nothing is scaled. */
export function IntervalStrip({ row, scale }: { row: ChartRow; scale: RateScale }) {
  const series = row.series ?? 0;
  const { estimate, low, high } = row;
  return (
    <svg height="28" aria-hidden="true" className={seriesClass(series)}>
      {scale.ticks.map((tick) => (
        <line
          key={tick}
          x1={`${scale.place(tick)}%`}
          x2={`${scale.place(tick)}%`}
          y1="0"
          y2="100%"
          className={tick === 0 ? 'chart-zero' : 'chart-grid'}
        />
      ))}
      {low === undefined || high === undefined ? null : (
        <line
          x1={`${scale.place(low)}%`}
          x2={`${scale.place(high)}%`}
          y1="50%"
          y2="50%"
          stroke="currentColor"
          strokeWidth="3"
        />
      )}
      {estimate === undefined ? null : (
        <svg x={`${scale.place(estimate)}%`} y="50%" overflow="visible" aria-hidden="true">
          <path d={markShape(series)} fill="currentColor" className="chart-mark" />
        </svg>
      )}
    </svg>
  );
}
