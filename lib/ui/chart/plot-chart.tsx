import { getLocale } from 'next-intl/server';
import { formatNumber } from '../format/number-text';
import { labelsThatFit } from './labels-that-fit';
import { markShape, seriesClass } from './mark-shape';
import { PlotLabel } from './plot-label';
import { type PlotPoint, pathOf, plotScale } from './plot-scale';

/** `course`: what was found; `limit` and `far-limit`: what it is held against; `centre`: what is expected. */
export type PlotLine = {
  readonly key: string;
  readonly points: readonly PlotPoint[];
  readonly kind: 'course' | 'limit' | 'far-limit' | 'centre';
  /** Colour and dashes, counted from 0. */
  readonly series?: number;
  readonly stairs?: boolean;
};

export type PlotMark = PlotPoint & {
  readonly key: string;
  readonly series: number;
  /** Written beside the mark, where it has to be told from the others. */
  readonly label?: string;
};

type Props = {
  readonly title: string;
  /** One sentence that says what the chart shows. */
  readonly reading: string;
  /** Unit of the upright axis, and what the other one counts. */
  readonly unit: string;
  readonly along: string;
  readonly from: number;
  readonly to: number;
  readonly alongTicks: readonly { readonly at: number; readonly text: string }[];
  readonly lines: readonly PlotLine[];
  readonly marks: readonly PlotMark[];
  readonly legend?: readonly { readonly key: string; readonly label: string; readonly series: number }[];
  readonly note?: string;
};

const height = 260;
/** The plot on a phone and on a desk; labels that fit on the desk alone are hidden on the phone. */
const phonePx = 285;
const deskPx = 700;

/**
 * Lines and marks over an axis from zero, drawn by the server: funnel, cumulative curves, control chart. Widths are shares of
 * the page and text is text, so it is complete without script and in print; series differ by shape and dashes as well as
 * colour. A table of the same numbers follows it on the page.
 */
export async function PlotChart(props: Props) {
  const { title, reading, unit, along, from, to, alongTicks, lines, marks, legend = [], note } = props;
  const locale = await getLocale();
  const all = [...lines.flatMap(({ points }) => points), ...marks];
  const scale = plotScale(
    from,
    to,
    all.map(({ y }) => y),
    height,
  );
  const told = [...marks]
    .sort((a, b) => b.series - a.series)
    .flatMap(({ key, x, y, label }) =>
      label === undefined ? [] : [{ key, xPercent: scale.x(x), y: scale.y(y), text: label }],
    );
  const places = marks.map(({ key, x, y }) => ({ key, xPercent: scale.x(x), y: scale.y(y) }));
  const onPhone = labelsThatFit(told, places, { widthPx: phonePx, heightPx: height });
  const onDesk = labelsThatFit(told, places, { widthPx: deskPx, heightPx: height });
  return (
    <figure className="chart">
      <figcaption>
        <p className="chart-title">{`${title},\u00a0${unit}`}</p>
        <p>{reading}</p>
      </figcaption>
      <div className="course-frame" aria-hidden="true">
        <svg width="36" height={height + 24} aria-hidden="true">
          {scale.ticks.map((tick) => (
            <text key={tick} x="30" y={scale.y(tick) + 5} textAnchor="end" className="chart-tick">
              {formatNumber(tick, locale)}
            </text>
          ))}
        </svg>
        <svg height={height + 24} className="course" aria-hidden="true">
          {scale.ticks.map((tick) => (
            <line key={tick} x1="0" x2="100%" y1={scale.y(tick)} y2={scale.y(tick)} className="chart-grid" />
          ))}
          <svg
            width="100%"
            height={height}
            viewBox={`0 0 100 ${height}`}
            preserveAspectRatio="none"
            aria-hidden="true"
          >
            {lines.map((line) => (
              <path
                key={line.key}
                d={pathOf(line.points, scale, line.stairs ?? false)}
                fill="none"
                vectorEffect="non-scaling-stroke"
                className={`plot-${line.kind} plot-dash-${(line.series ?? 0) % 7} ${seriesClass(line.series ?? 0)}`}
              />
            ))}
          </svg>
          {marks.map((mark) => (
            <svg
              key={mark.key}
              x={`${scale.x(mark.x)}%`}
              y={scale.y(mark.y)}
              overflow="visible"
              className={seriesClass(mark.series)}
              aria-hidden="true"
            >
              <path d={markShape(mark.series)} fill="currentColor" className="chart-mark" />
              {mark.label === undefined ? null : (
                <PlotLabel text={mark.label} onPhone={onPhone.get(mark.key)} onDesk={onDesk.get(mark.key)} />
              )}
            </svg>
          ))}
          {alongTicks.map(({ at, text }) => (
            <text
              key={at}
              x={`${scale.x(at)}%`}
              y={height + 18}
              textAnchor={scale.x(at) < 5 ? 'start' : scale.x(at) > 90 ? 'end' : 'middle'}
              className="chart-tick"
            >
              {text}
            </text>
          ))}
        </svg>
      </div>
      <p className="plot-along">{along}</p>
      {legend.length === 0 ? null : (
        <ul className="plot-legend">
          {legend.map(({ key, label, series }) => (
            <li key={key} className={seriesClass(series)}>
              <svg width="44" height="16" aria-hidden="true">
                <line x1="0" x2="44" y1="8" y2="8" className={`plot-course plot-dash-${series % 7}`} />
                <svg x="22" y="8" overflow="visible" aria-hidden="true">
                  <path d={markShape(series)} fill="currentColor" className="chart-mark" />
                </svg>
              </svg>
              <span>{label}</span>
            </li>
          ))}
        </ul>
      )}
      {note === undefined ? null : <p className="quiet chart-note">{note}</p>}
    </figure>
  );
}
