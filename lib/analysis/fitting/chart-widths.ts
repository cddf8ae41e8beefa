import type { CannotCompute } from '../../stats/outcome';
import type { EwmaDesign } from '../../stats/watching/ewma-run-length';
import { type EwmaWidth, ewmaWidth } from '../../stats/watching/ewma-width';

/** Widths of control charts for a stated number of batches between false alarms: tenths of a second each. */
export type WidthsRequest = {
  readonly kind: 'chart-widths';
  readonly designs: readonly EwmaDesign[];
  readonly falseAlarmEvery: number;
};

export type ChartWidth = EwmaWidth | CannotCompute;

export function answerWidths({ designs, falseAlarmEvery }: WidthsRequest): ChartWidth[] {
  return designs.map((design) => ewmaWidth(design, falseAlarmEvery));
}
