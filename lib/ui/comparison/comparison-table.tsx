import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { DataTable } from '../table/data-table';

type Props = {
  readonly caption: string;
  readonly firstHeader: string;
  readonly rows: readonly ComparedRow[];
  readonly nameOf: (row: ComparedRow) => string;
  readonly groupOf?: (row: ComparedRow) => string;
  readonly timeZone: string;
  readonly massUnit: MassUnit;
};

/** One table of the comparison: every figure opens the batches behind it. */
export async function ComparisonTable({
  caption,
  firstHeader,
  rows,
  nameOf,
  groupOf,
  timeZone,
  massUnit,
}: Props) {
  const t = await getTranslations('comparison');
  const locale = await getLocale();
  const view = await loadFigureViews(timeZone);
  const cell = (figure: ShownFigure, of: string) => (
    <Link
      href={`/comparison/rows?${figure.rowsQuery}` as Route}
      className="figure-link"
      aria-label={t('open', { of })}
    >
      <FigureCell view={view(figure)} />
    </Link>
  );
  const [first] = rows;
  const yieldUnit = first ? view(first.yield).unit || t('columns.yieldUnit') : '';
  const ofCount = (figure: ShownFigure) =>
    figure.kind === 'cannot'
      ? '0'
      : t('ofUnits', { events: figure.parts.numerator, units: figure.parts.denominator });
  return (
    <DataTable
      caption={caption}
      rows={rows}
      rowKey={(row) => `${row.method ?? 'all'} ${row.site ?? 'all'}`}
      {...(groupOf === undefined ? {} : { groupOf })}
      columns={[
        { key: 'name', header: firstHeader, cell: (row) => nameOf(row) },
        {
          key: 'contamination',
          header: t('columns.contamination'),
          unit: '%',
          numeric: true,
          cell: (row) => cell(row.contamination, `${t('columns.contamination')}, ${nameOf(row)}`),
        },
        {
          key: 'count',
          header: t('columns.count'),
          numeric: true,
          cell: (row) => ofCount(row.contamination),
        },
        {
          key: 'anyTime',
          header: t('columns.anyTime'),
          unit: '%',
          numeric: true,
          cell: (row) => <FigureCell view={view(row.contaminationAtAnyTime)} />,
        },
        {
          key: 'notInspected',
          header: t('columns.notInspected'),
          numeric: true,
          cell: (row) =>
            row.contamination.leftOut.find(({ reason }) => reason === 'not-inspected')?.batches ?? 0,
        },
        { key: 'lost', header: t('columns.lostOther'), numeric: true, cell: (row) => row.lostOtherUnits },
        {
          key: 'yield',
          header: t('columns.yield'),
          unit: yieldUnit,
          numeric: true,
          cell: (row) => cell(row.yield, `${t('columns.yield')}, ${nameOf(row)}`),
        },
        {
          key: 'cropped',
          header: t('columns.cropped'),
          unit: yieldUnit,
          numeric: true,
          cell: (row) => <FigureCell view={view(row.yieldOfCropped)} />,
        },
        {
          key: 'batches',
          header: t('columns.batches'),
          numeric: true,
          cell: (row) => `${row.contamination.n.batches} / ${row.yield.n.batches}`,
        },
        {
          key: 'later',
          header: t('columns.later'),
          numeric: true,
          cell: (row) => (row.laterGrams === 0 ? '–' : formatMass(row.laterGrams, massUnit, locale)),
        },
      ]}
    />
  );
}
