import { scaleLinear } from 'd3-scale';

/** A value read at an instant. */
export type CoursePoint = { readonly at: Date; readonly value: number };
/** The least and the most of a stretch of time, for instance of a day. */
export type CourseSpan = {
  readonly from: Date;
  readonly to: Date;
  readonly low: number;
  readonly high: number;
};

export type CourseScale = {
  /** Place of an instant in percent of the width. */
  readonly x: (at: Date) => number;
  /** Place of a value in pixels from the top. */
  readonly y: (value: number) => number;
  readonly ticks: readonly number[];
  /** First, middle and last. */
  readonly times: readonly Date[];
};

const steps = 2;

/**
 * Scales of a course over time: wide enough for its values and for the limits it is held against, with few enough ticks
 * for a narrow screen.
 */
export function courseScale(
  span: { readonly from: Date; readonly to: Date },
  values: readonly number[],
  height: number,
): CourseScale {
  const start = span.from.getTime();
  const length = Math.max(60_000, span.to.getTime() - start);
  const least = Math.min(...values);
  const most = Math.max(...values);
  const scale = scaleLinear()
    .domain(least < most ? [least, most] : [least - 1, most + 1])
    .range([height - 4, 14])
    .nice(4);
  return {
    x: (at) => Number((((at.getTime() - start) / length) * 100).toFixed(3)),
    y: (value) => Number(scale(value).toFixed(1)),
    ticks: scale.ticks(4),
    times: Array.from({ length: steps + 1 }, (_, index) => new Date(start + (length * index) / steps)),
  };
}
