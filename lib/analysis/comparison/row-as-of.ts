import type { ShownFigure } from '../shown-figure';
import type { ComparedRow } from './compare';

const now = <Figure extends ShownFigure | undefined>(figure: Figure, asOf: string): Figure =>
  figure && { ...figure, asOf };

/** A remembered row as of a later moment, where nothing was written in between. */
export function rowAsOf(row: ComparedRow, asOf: string): ComparedRow {
  return {
    ...row,
    contamination: now(row.contamination, asOf),
    contaminationAtAnyTime: now(row.contaminationAtAnyTime, asOf),
    yield: now(row.yield, asOf),
    yieldOfCropped: now(row.yieldOfCropped, asOf),
    logLifeBe: now(row.logLifeBe, asOf),
  };
}
