import { getLocale, getTranslations } from 'next-intl/server';
import { formatNumber } from '../format/number-text';
import type { ChartRow } from './chart-row';
import { IntervalStrip } from './interval-strip';
import { rateScale } from './rate-scale';

type Props = {
  readonly title: string;
  /** One sentence that says what the chart shows. */
  readonly reading: string;
  /** Unit of the axis: "%" or "kg per m²". */
  readonly unit: string;
  readonly rows: readonly ChartRow[];
};

/**
 * Estimates as marks, 95 % intervals as lines, on an axis from zero; labels and figures are text, so the chart is
 * complete without script, in print and read aloud. A table of the same numbers follows it on the page.
 */
export async function DotIntervalChart({ title, reading, unit, rows }: Props) {
  const t = await getTranslations('common.chart');
  const locale = await getLocale();
  const scale = rateScale(rows.flatMap((row) => [row.estimate ?? 0, row.high ?? 0]));
  const step = (scale.ticks[1] ?? 1) - (scale.ticks[0] ?? 0);
  const digits = Number.isInteger(step) ? 0 : step >= 0.1 ? 1 : 2;
  const countsOnly = rows.some((row) => row.estimate === undefined);
  return (
    <figure className="chart">
      <figcaption>
        <p className="chart-title">{title}</p>
        <p>{reading}</p>
      </figcaption>
      <div className="chart-rows">
        {rows.map((row, index) => (
          <div key={row.key}>
            {row.group !== undefined && row.group !== rows[index - 1]?.group ? (
              <p className="chart-group">{row.group}</p>
            ) : null}
            <div className="chart-row">
              <span className="chart-label">{row.label}</span>
              <span className="chart-strip">
                <IntervalStrip row={row} scale={scale} />
              </span>
              <span className="chart-figures">
                {row.text} <span className="quiet">{row.size}</span>
              </span>
            </div>
          </div>
        ))}
        <div className="chart-row" aria-hidden="true">
          <span className="chart-strip">
            <svg height="36" aria-hidden="true">
              {scale.ticks.map((tick) => (
                <text
                  key={tick}
                  x={`${scale.place(tick)}%`}
                  y="18"
                  textAnchor="middle"
                  className="chart-tick"
                >
                  {formatNumber(tick, locale, digits)}
                </text>
              ))}
            </svg>
            <span className="chart-unit">{unit}</span>
          </span>
        </div>
      </div>
      <p className="quiet chart-note">
        {t('howToRead')} {countsOnly ? t('countsNote') : ''}
      </p>
    </figure>
  );
}
