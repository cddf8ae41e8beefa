import type { EwmaDesign } from '@/lib/stats/watching/ewma-run-length';
import type { ChartWidth, WidthsRequest } from '../fitting/chart-widths';

/** How much of the average the latest batch makes up, and how rare a false alarm is to be. Our choices. */
export const courseWeight = 0.2;
const falseAlarmEvery = 200;

/** However widths are worked out: in a thread of its own, or here and now in a test. */
export type WorkOutWidths = (request: WidthsRequest) => Promise<readonly ChartWidth[]>;

const centres = [0.005, 0.01, 0.02, 0.035, 0.05, 0.08, 0.12, 0.17, 0.23, 0.3, 0.4, 0.5];
const sizes = [1, 2, 4, 6, 9, 13, 18, 25, 35, 50, 75, 100];

function nearest(values: readonly number[], value: number): number {
  return values.reduce((best, one) =>
    Math.abs(Math.log(one / value)) < Math.abs(Math.log(best / value)) ? one : best,
  );
}

/** The design that stands for a site's: rate and batch size to the nearest of a dozen each, so that sites share widths. */
export function standardDesign(centre: number, units: number, correlation: number): EwmaDesign {
  return {
    centre: nearest(centres, Math.min(centre, 1 - centre)),
    weight: courseWeight,
    units: nearest(sizes, units),
    intraBatchCorrelation: Math.round(correlation * 50) / 50,
  };
}

export const designKey = (design: EwmaDesign) => Object.values(design).join(' ');

/** Widths that this process has worked out; each depends on its design alone. */
const known = new Map<string, ChartWidth>();

/** The width of each design, by `designKey`. */
export async function widthsOf(
  designs: readonly EwmaDesign[],
  workOut: WorkOutWidths,
): Promise<ReadonlyMap<string, ChartWidth>> {
  const wanted = new Map(designs.map((design) => [designKey(design), design]));
  const missing = [...wanted.values()].filter((design) => !known.has(designKey(design)));
  if (missing.length > 0) {
    const widths = await workOut({ kind: 'chart-widths', designs: missing, falseAlarmEvery });
    missing.forEach((design, index) => {
      const width = widths[index];
      if (width !== undefined) known.set(designKey(design), width);
    });
  }
  return known;
}
