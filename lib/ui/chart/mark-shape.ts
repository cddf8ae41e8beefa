/** Outlines around the origin, about 12 px across, so that series differ in grey print too. Order is the series'. */
const shapes = [
  'M-5.5 0a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0-11 0Z',
  'M-5-5H5V5H-5Z',
  'M0-6.5 6 5H-6Z',
  'M0-7 6 0 0 7-6 0Z',
  'M0 6.5 6-5H-6Z',
  'M-2-6H2V-2H6V2H2V6H-2V2H-6V-2H-2Z',
  'M-6-3 0-7 6-3 4 5H-4Z',
] as const;

export const seriesCount = shapes.length;

/** SVG path of a series' mark; `series` counts from 0 and starts again after the seventh. */
export function markShape(series: number): string {
  return shapes[series % seriesCount] ?? shapes[0];
}

/** Class that gives the series its colour. */
export function seriesClass(series: number): string {
  return `series-${(series % seriesCount) + 1}`;
}
