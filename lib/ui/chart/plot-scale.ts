import { scaleLinear } from 'd3-scale';
import { rateScale } from './rate-scale';

export type PlotPoint = { readonly x: number; readonly y: number };

export type PlotScale = {
  /** Place in percent of the width. */
  readonly x: (value: number) => number;
  /** Place in pixels from the top. */
  readonly y: (value: number) => number;
  readonly ticks: readonly number[];
};

/** Scales of a plot from 0 upwards; x runs from `from` to `to`. */
export function plotScale(from: number, to: number, values: readonly number[], height: number): PlotScale {
  const { place, ticks } = rateScale(values);
  const along = scaleLinear()
    .domain([from, to > from ? to : from + 1])
    .range([0, 100]);
  return {
    x: (value) => Number(along(value).toFixed(2)),
    y: (value) => Number((height - (Math.max(0, place(value)) / 100) * (height - 14)).toFixed(1)),
    ticks,
  };
}

/** Few round numbers from 0 up to `most`, for an axis on a narrow screen. */
export function roundTicks(most: number): readonly number[] {
  return scaleLinear().domain([0, most]).ticks(3);
}

/** The path of a line, or of a staircase that holds each value until the next. x in percent, y in pixels. */
export function pathOf(points: readonly PlotPoint[], scale: PlotScale, stairs: boolean): string {
  return points
    .map((point, index) => {
      const [x, y] = [scale.x(point.x), scale.y(point.y)];
      if (index === 0) return `M${x} ${y}`;
      return stairs ? `H${x}V${y}` : `L${x} ${y}`;
    })
    .join('');
}
