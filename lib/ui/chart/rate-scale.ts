import { scaleLinear } from 'd3-scale';

export type RateScale = {
  /** Place on the axis in percent of its width, 0 to 100. */
  readonly place: (value: number) => number;
  readonly ticks: readonly number[];
};

/** A scale from zero to a round number above the largest value, with few enough ticks for a narrow screen. */
export function rateScale(values: readonly number[]): RateScale {
  const most = Math.max(0, ...values);
  const scale = scaleLinear()
    .domain([0, most === 0 ? 1 : most])
    .range([0, 100])
    .nice(4);
  return { place: (value) => Number(scale(value).toFixed(3)), ticks: scale.ticks(4) };
}
