import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { type ShownFigure, shownLevel } from './shown-figure';
import { shownInterval } from './shown-interval';

const source = 'Wilson (1927); Newcombe (1998), Statistics in Medicine 17:857-872, method 3';

/**
 * The contamination rate of one batch, percent, with Wilson's interval. Only inside one batch are the units a plain
 * sample; units of several batches share runs and sites and go through `contaminationFigure`.
 * `inoculatedUnits` is 1 or more, `contaminatedUnits` 0 to that many; anything else throws ArgumentError.
 */
export function singleBatchContamination(counts: {
  readonly contaminatedUnits: number;
  readonly inoculatedUnits: number;
  readonly asOf: string;
}): ShownFigure {
  const { contaminatedUnits, inoculatedUnits, asOf } = counts;
  const interval = wilsonInterval(contaminatedUnits, inoculatedUnits, shownLevel);
  return {
    kind: 'figure',
    unit: 'percent',
    value: (100 * contaminatedUnits) / inoculatedUnits,
    interval: shownInterval(interval, 100),
    n: { batches: 1, units: inoculatedUnits, runs: 1, sites: 1 },
    parts: { numerator: contaminatedUnits, denominator: inoculatedUnits, unit: 'units' },
    method: { code: 'wilson', source, clusteredBy: 'unit' },
    marks: [],
    leftOut: [],
    asOf,
    rowsQuery: '',
  };
}
