import { ewmaProportion } from '@/lib/stats/watching/ewma-proportion';
import type { EwmaDesign } from '@/lib/stats/watching/ewma-run-length';
import type { CountedBatch } from '../adjusted/contamination-request';
import type { ChartWidth } from '../fitting/chart-widths';
import { courseWeight, standardDesign } from './course-widths';
import type { SiteCourse } from './sites-answer';

/** With fewer batches there is no course to speak of. */
const fewestBatches = 8;

/** What the limits of a site's course depend on; undefined with too few batches, or where nothing or everything was lost. */
export function courseDesign(batches: readonly CountedBatch[], correlation: number): EwmaDesign | undefined {
  const { events, units } = sumsOf(batches);
  if (batches.length < fewestBatches || events === 0 || events === units) return undefined;
  const sizes = batches.map((batch) => batch.units).sort((a, b) => a - b);
  return standardDesign(events / units, sizes[Math.floor(sizes.length / 2)] ?? 1, correlation);
}

/**
 * A site's own course: the moving average of its batches in the order in which they were judged, against its own rate over the
 * whole period. Limits allow for units of one batch that fail together, and are as wide as the stated rarity of false alarms
 * asks for. What is the same all along, however high, is no signal here: the comparison with other sites shows that.
 */
export function siteCourse(
  batches: readonly CountedBatch[],
  correlation: number,
  limit: ChartWidth | undefined,
): SiteCourse | null {
  if (limit === undefined || limit.kind === 'cannot-compute') return null;
  const ordered = [...batches].sort(
    (a, b) => a.assessedOn.localeCompare(b.assessedOn) || a.id.localeCompare(b.id),
  );
  const { events, units } = sumsOf(ordered);
  const chart = ewmaProportion(
    ordered.map((batch) => ({ events: batch.contaminated, units: batch.units })),
    { centre: events / units, weight: courseWeight, width: limit.width, intraBatchCorrelation: correlation },
  );
  return {
    centrePercent: (100 * events) / units,
    falseAlarmEvery: Math.round(limit.runLength),
    correlation,
    points: ordered.flatMap((batch, index) => {
      const point = chart.points[index];
      if (point === undefined) return [];
      const { value, low, high } = point;
      return [
        {
          batchId: batch.id,
          on: batch.assessedOn,
          events: batch.contaminated,
          units: batch.units,
          value: 100 * value,
          low: 100 * Math.max(0, low),
          high: 100 * Math.min(1, high),
          signal: value > high ? ('above' as const) : value < low ? ('below' as const) : null,
        },
      ];
    }),
  };
}

function sumsOf(batches: readonly CountedBatch[]): { events: number; units: number } {
  return {
    events: batches.reduce((sum, { contaminated }) => sum + contaminated, 0),
    units: batches.reduce((sum, batch) => sum + batch.units, 0),
  };
}
