import { stringify } from 'csv-stringify/sync';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import type { ShownFigure } from '@/lib/analysis/shown-figure';

export type CsvNames = {
  readonly methodName: (key: string | undefined) => string;
  readonly siteName: (id: string | undefined) => string;
};

/** Which batches the figures are about, repeated in every line so that a line never stands without it. */
export type CsvScope = {
  readonly species: string;
  readonly container: string;
  readonly material: string;
  readonly from: string;
  readonly to: string;
};

const figureColumns = [
  'value',
  'low',
  'high',
  'note',
  'numerator',
  'denominator',
  'batches',
  'clusters_by',
  'marks',
  'left_out_batches',
] as const;

function figureCells(figure: ShownFigure): (string | number)[] {
  const interval = figure.kind === 'figure' ? figure.interval : undefined;
  const [low, high] = interval?.kind === 'interval' ? [interval.low, interval.high] : ['', ''];
  const note = figure.kind === 'figure' ? (interval?.kind === 'none' ? interval.reason : '') : figure.reason;
  return [
    figure.kind === 'figure' ? figure.value : '',
    low,
    high,
    note,
    figure.kind === 'cannot' ? '' : figure.parts.numerator,
    figure.kind === 'cannot' ? '' : figure.parts.denominator,
    figure.n.batches,
    figure.method.clusteredBy,
    figure.marks.join(' '),
    figure.leftOut.map(({ reason, batches }) => `${reason}:${batches}`).join(' '),
  ];
}

function levelOf({ method, site }: ComparedRow): string {
  if (method === undefined) return site === undefined ? 'total' : 'site';
  return site === undefined ? 'method' : 'cell';
}

/**
 * The comparison as CSV (RFC 4180): the rows of the page in its order, unrounded, with what each figure rests on.
 * `total` is the first line. Text cells cannot become formulas.
 */
export function comparisonCsv(
  total: ComparedRow,
  rows: readonly ComparedRow[],
  names: CsvNames,
  scope: CsvScope,
): string {
  const prefixed = (name: string) => figureColumns.map((column) => `${name}_${column}`);
  const unit = total.yield.unit.replaceAll('-', '_');
  const header = [
    ...['level', 'method', 'site', 'species', 'container', 'material', 'inoculated_from', 'inoculated_to'],
    ...prefixed('contamination_percent'),
    ...prefixed('contamination_any_time_percent'),
    'lost_other_units',
    ...prefixed(`yield_${unit}`),
    ...prefixed(`yield_of_cropped_${unit}`),
    'later_fresh_grams',
    'as_of',
  ];
  const { species, container, material, from, to } = scope;
  const lines = [total, ...rows].map((row) => [
    ...[levelOf(row), names.methodName(row.method), names.siteName(row.site)],
    ...[species, container, material, from, to],
    ...figureCells(row.contamination),
    ...figureCells(row.contaminationAtAnyTime),
    row.lostOtherUnits,
    ...figureCells(row.yield),
    ...figureCells(row.yieldOfCropped),
    row.laterGrams,
    row.contamination.asOf,
  ]);
  return stringify([header, ...lines], { record_delimiter: 'windows', escape_formulas: true, bom: true });
}
