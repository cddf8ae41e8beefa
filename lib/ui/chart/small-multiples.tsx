import { scaleLinear } from 'd3-scale';
import type { ReactNode } from 'react';
import { markShape, seriesClass } from './mark-shape';
import type { PlotPoint } from './plot-scale';

export type PanelLine = {
  readonly key: string;
  readonly points: readonly PlotPoint[];
  /** `course` in the colour and dashes of its series; `limit`: what it is held against. */
  readonly kind: 'course' | 'limit';
  readonly series?: number;
};

export type Panel = {
  readonly key: string;
  readonly title: ReactNode;
  /** What the panel says in words, under its title. */
  readonly text: string;
  readonly lines: readonly PanelLine[];
  readonly marks: readonly (PlotPoint & { readonly key: string; readonly series: number })[];
};

type Props = {
  readonly title: string;
  /** One sentence that says what the charts show. */
  readonly reading: string;
  readonly panels: readonly Panel[];
  /** Panels whose values set the scale, where those shown are some of them. */
  readonly scaledBy?: readonly Panel[];
  /** A value of the upright axis as it is written. */
  readonly tick: (value: number) => string;
  readonly from: number;
  readonly to: number;
  /** Written at both ends of the lower axis; '' for none. */
  readonly ends: readonly [string, string];
  /** Values that every panel marks by a line, with their text. */
  readonly lines: readonly { readonly at: number; readonly text: string }[];
  /** A band that is shaded in every panel: what the course should lie in. */
  readonly band?: { readonly low: number; readonly high: number | null };
  readonly note?: string;
};

const height = 96;

/**
 * The same small chart many times over, on one scale, drawn by the server: what differs between them is seen at a glance. Widths
 * are shares of each panel and text is text. A table of the same numbers follows on the page.
 */
export function SmallMultiples(props: Props) {
  const { title, reading, panels, scaledBy = panels, tick, from, to, ends, lines, band, note } = props;
  const values = [
    ...scaledBy.flatMap((panel) => [...panel.lines.flatMap(({ points }) => points), ...panel.marks]),
  ].map(({ y }) => y);
  const all = [...values, ...lines.map(({ at }) => at)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const upright = scaleLinear()
    .domain(least < most ? [least, most] : [least - 1, least + 1])
    .range([height - 4, 6])
    .clamp(true);
  const along = scaleLinear()
    .domain([from, to > from ? to : from + 1])
    .range([0, 100])
    .clamp(true);
  const x = (value: number) => Number(along(value).toFixed(2));
  const y = (value: number) => Number(upright(value).toFixed(1));
  const path = (points: readonly PlotPoint[]) =>
    points.map((point, index) => `${index === 0 ? 'M' : 'L'}${x(point.x)} ${y(point.y)}`).join('');
  return (
    <figure className="chart">
      <figcaption>
        <p className="chart-title">{title}</p>
        <p>{reading}</p>
      </figcaption>
      <ul className="panels">
        {panels.map((panel) => (
          <li key={panel.key}>
            <p className="panel-title">{panel.title}</p>
            <div className="course-frame" aria-hidden="true">
              <svg height={height + 18} width="48" className="panel-axis" aria-hidden="true">
                {upright.ticks(3).map((value) => (
                  <text key={value} x="44" y={y(value) + 5} textAnchor="end" className="chart-tick">
                    {tick(value)}
                  </text>
                ))}
              </svg>
              <svg height={height + 18} className="course" width="100%" aria-hidden="true">
                {upright.ticks(3).map((value) => (
                  <line key={value} x1="0" x2="100%" y1={y(value)} y2={y(value)} className="panel-grid" />
                ))}
                {band === undefined ? null : (
                  <rect
                    x="0"
                    width="100%"
                    y={band.high === null ? 0 : y(band.high)}
                    height={y(band.low) - (band.high === null ? 0 : y(band.high))}
                    className="course-window"
                  />
                )}
                {lines.map(({ at, text }) => (
                  <g key={at}>
                    <line x1="0" x2="100%" y1={y(at)} y2={y(at)} className="course-limit" />
                    <text
                      x={y(at) < height / 2 ? '100%' : '0'}
                      y={y(at) + (y(at) < height / 2 ? 14 : -3)}
                      textAnchor={y(at) < height / 2 ? 'end' : 'start'}
                      className="chart-tick"
                    >
                      {text}
                    </text>
                  </g>
                ))}
                <svg
                  width="100%"
                  height={height}
                  viewBox={`0 0 100 ${height}`}
                  preserveAspectRatio="none"
                  aria-hidden="true"
                >
                  {panel.lines.map((line) => (
                    <path
                      key={line.key}
                      d={path(line.points)}
                      fill="none"
                      vectorEffect="non-scaling-stroke"
                      className={`panel-line plot-${line.kind} plot-dash-${(line.series ?? 0) % 7} ${seriesClass(line.series ?? 0)}`}
                    />
                  ))}
                </svg>
                {panel.marks.map((mark) => (
                  <svg
                    key={mark.key}
                    x={`${x(mark.x)}%`}
                    y={y(mark.y)}
                    overflow="visible"
                    className={seriesClass(mark.series)}
                    aria-hidden="true"
                  >
                    <path d={markShape(mark.series)} fill="currentColor" className="panel-mark" />
                  </svg>
                ))}
                <text x="0" y={height + 14} className="chart-tick">
                  {ends[0]}
                </text>
                <text x="100%" y={height + 14} textAnchor="end" className="chart-tick">
                  {ends[1]}
                </text>
              </svg>
            </div>
            <p className="panel-text">{panel.text}</p>
          </li>
        ))}
      </ul>
      {note === undefined ? null : <p className="quiet chart-note">{note}</p>}
    </figure>
  );
}
