import { stringify } from 'csv-stringify/sync';
import type { ComparedRow, Comparison } from '@/lib/analysis/comparison/compare';
import type { ShownFigure } from '@/lib/analysis/shown-figure';

export type CsvNames = {
  readonly methodName: (key: string | undefined) => string;
  readonly siteName: (id: string | undefined) => string;
};

const figureColumns = [
  'value',
  'low',
  'high',
  'numerator',
  'denominator',
  'batches',
  'marks',
  'left_out',
] as const;

function figureCells(figure: ShownFigure): (string | number)[] {
  const interval =
    figure.kind === 'figure' && figure.interval.kind === 'interval' ? figure.interval : undefined;
  const reason = figure.kind === 'figure' ? '' : figure.reason;
  return [
    figure.kind === 'figure' ? figure.value : reason,
    interval?.low ?? '',
    interval?.high ?? '',
    figure.kind === 'cannot' ? '' : figure.parts.numerator,
    figure.kind === 'cannot' ? '' : figure.parts.denominator,
    figure.n.batches,
    figure.marks.join(' '),
    figure.leftOut.map(({ reason: why, batches }) => `${why}:${batches}`).join(' '),
  ];
}

/** The comparison as CSV (RFC 4180): the rows of the page in its order, unrounded. Text cells cannot become formulas. */
export function comparisonCsv(comparison: Comparison, rows: readonly ComparedRow[], names: CsvNames): string {
  const prefixed = (name: string) => figureColumns.map((column) => `${name}_${column}`);
  const header = [
    'level',
    'method',
    'site',
    ...prefixed('contamination_percent'),
    ...prefixed('contamination_any_time_percent'),
    'lost_other_units',
    ...prefixed(`yield_${comparison.total.yield.unit.replaceAll('-', '_')}`),
    ...prefixed('yield_of_cropped'),
    'later_fresh_grams',
  ];
  const levelOf = (row: ComparedRow) =>
    row.method === undefined
      ? row.site === undefined
        ? 'total'
        : 'site'
      : row.site === undefined
        ? 'method'
        : 'cell';
  const lines = [comparison.total, ...rows].map((row) => [
    levelOf(row),
    names.methodName(row.method),
    names.siteName(row.site),
    ...figureCells(row.contamination),
    ...figureCells(row.contaminationAtAnyTime),
    row.lostOtherUnits,
    ...figureCells(row.yield),
    ...figureCells(row.yieldOfCropped),
    row.laterGrams,
  ]);
  return stringify([header, ...lines], { record_delimiter: 'windows', escape_formulas: true, bom: true });
}
