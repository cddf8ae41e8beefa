import { getLocale } from 'next-intl/server';
import { formatNumber } from '../format/number-text';
import type { CoursePoint, CourseSpan } from './course-scale';
import { courseScale } from './course-scale';
import { markShape } from './mark-shape';

type Props = {
  readonly title: string;
  /** One sentence that says what the chart shows. */
  readonly reading: string;
  /** '' where the title says it. */
  readonly unit: string;
  readonly points: readonly CoursePoint[];
  readonly spans?: readonly CourseSpan[];
  /** The limits it is held against; `null`: no limit on that side. */
  readonly limits?: { readonly low: number | null; readonly high: number | null };
  /** Between points further apart than this the course is not known and drawn dotted. */
  readonly maxGapMinutes: number;
  readonly timeText: (at: Date) => string;
  /** A mark at each point, where each was read by hand. */
  readonly marks?: boolean;
};

const height = 190;

/**
 * A course over time against its limits, drawn by the server. Places are percentages of the width and text is text, so
 * it is complete without script, in grey print and at any width; a table of the same numbers follows it on the page.
 */
export async function CourseChart({
  title,
  reading,
  unit,
  points,
  spans = [],
  limits,
  maxGapMinutes,
  timeText,
  marks = true,
}: Props) {
  const locale = await getLocale();
  const times = [...points.map(({ at }) => at), ...spans.flatMap(({ from, to }) => [from, to])];
  const [first] = times;
  if (first === undefined) return null;
  const low = limits?.low ?? null;
  const high = limits?.high ?? null;
  const wanted = [low, high].filter((one) => one !== null);
  const from = new Date(Math.min(...times.map(Number)));
  const to = new Date(Math.max(...times.map(Number)));
  const values = [
    ...points.map(({ value }) => value),
    ...spans.flatMap((span) => [span.low, span.high]),
    ...wanted,
  ];
  const scale = courseScale({ from, to }, values, height);
  const step = (scale.ticks[1] ?? 1) - (scale.ticks[0] ?? 0);
  const top = high === null ? 14 : scale.y(high);
  const bottom = low === null ? height - 4 : scale.y(low);
  const labels = scale.times.map((at, index) => ({ at, index, text: timeText(at) }));
  const toldTimes = labels.filter(({ text }, index) => text !== labels[index - 1]?.text);
  return (
    <figure className="chart">
      <figcaption>
        <p className="chart-title">{unit === '' ? title : `${title}, ${unit}`}</p>
        <p>{reading}</p>
      </figcaption>
      <div className="course-frame" aria-hidden="true">
        <svg width="44" height={height + 24} aria-hidden="true">
          {scale.ticks.map((tick) => (
            <text key={tick} x="40" y={scale.y(tick) + 5} textAnchor="end" className="chart-tick">
              {formatNumber(tick, locale, Number.isInteger(step) ? 0 : 1)}
            </text>
          ))}
        </svg>
        <svg height={height + 24} className="course series-1" aria-hidden="true">
          {wanted.length === 0 ? null : (
            <rect x="0" width="100%" y={top} height={Math.max(0, bottom - top)} className="course-window" />
          )}
          {scale.ticks.map((tick) => (
            <line key={tick} x1="0" x2="100%" y1={scale.y(tick)} y2={scale.y(tick)} className="chart-grid" />
          ))}
          {wanted.map((limit) => (
            <line
              key={limit}
              x1="0"
              x2="100%"
              y1={scale.y(limit)}
              y2={scale.y(limit)}
              className="course-limit"
            />
          ))}
          {spans.map((span) => (
            <rect
              key={span.from.getTime()}
              x={`${scale.x(span.from)}%`}
              width={`${Math.max(0.6, scale.x(span.to) - scale.x(span.from))}%`}
              y={scale.y(span.high)}
              height={Math.max(1, scale.y(span.low) - scale.y(span.high))}
              className="course-span"
            />
          ))}
          {points.slice(1).map((point, index) => {
            const before = points[index] ?? point;
            const gap = point.at.getTime() - before.at.getTime() > maxGapMinutes * 60_000;
            return (
              <line
                key={point.at.getTime()}
                x1={`${scale.x(before.at)}%`}
                y1={scale.y(before.value)}
                x2={`${scale.x(point.at)}%`}
                y2={scale.y(point.value)}
                className={gap ? 'course-gap' : 'course-line'}
              />
            );
          })}
          {marks
            ? points.map(({ at, value }) => (
                <svg
                  key={at.getTime()}
                  x={`${scale.x(at)}%`}
                  y={scale.y(value)}
                  overflow="visible"
                  aria-hidden="true"
                >
                  <path d={markShape(0)} fill="currentColor" className="chart-mark" />
                </svg>
              ))
            : null}
          {toldTimes.map(({ at, index, text }) => (
            <text
              key={at.getTime()}
              x={`${scale.x(at)}%`}
              y={height + 18}
              textAnchor={index === 0 ? 'start' : index === scale.times.length - 1 ? 'end' : 'middle'}
              className="chart-tick"
            >
              {text}
            </text>
          ))}
        </svg>
      </div>
    </figure>
  );
}
