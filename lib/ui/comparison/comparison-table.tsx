import { getLocale, getTranslations } from 'next-intl/server';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import type { LeftOutReason, ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { DataTable } from '../table/data-table';
import { yieldKind, yieldUnitKey } from './yield-kind';

type Props = {
  readonly caption: string;
  readonly firstHeader: string;
  readonly rows: readonly ComparedRow[];
  readonly nameOf: (row: ComparedRow) => string;
  readonly groupOf?: (row: ComparedRow) => string;
  readonly container: ContainerKind;
  readonly timeZone: string;
  readonly massUnit: MassUnit;
};

function batchesLeftOut(figure: ShownFigure, why: LeftOutReason): number {
  return figure.leftOut.find(({ reason }) => reason === why)?.batches ?? 0;
}

/** One table of the comparison: every figure has its n beside it and opens the batches behind it. */
export async function ComparisonTable(props: Props) {
  const { caption, firstHeader, rows, nameOf, groupOf, container, timeZone, massUnit } = props;
  const t = await getTranslations('comparison');
  const locale = await getLocale();
  const view = await loadFigureViews(timeZone, massUnit);
  const yieldName = t(`yieldName.${yieldKind(container)}`);
  const yieldUnit = t(`yieldUnit.${yieldUnitKey(container, massUnit)}`);
  const rateUnit = container === 'bed' ? t('failedBeds') : '%';
  const size = (figure: ShownFigure) => {
    const batches = t('batchCount', { count: figure.n.batches });
    if (figure.kind !== 'figure' || figure.parts.unit !== 'units') return batches;
    const { numerator, denominator } = figure.parts;
    return `${t('ofUnits', { events: numerator, units: denominator })}, ${batches}`;
  };
  const cell = (figure: ShownFigure, column: string, row: ComparedRow) => (
    <>
      <a
        href={`/comparison/rows?${figure.rowsQuery}`}
        className="figure-link"
        aria-label={t('open', { of: `${column}, ${nameOf(row)}: ${view(figure).estimate}` })}
      >
        <FigureCell view={view(figure)} />
      </a>
      {figure.n.batches === 0 ? null : <span className="cell-reason">{size(figure)}</span>}
    </>
  );
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
          unit: rateUnit,
          numeric: true,
          cell: (row) => cell(row.contamination, t('columns.contamination'), row),
        },
        {
          key: 'anyTime',
          header: t('columns.anyTime'),
          unit: rateUnit,
          numeric: true,
          cell: (row) => cell(row.contaminationAtAnyTime, t('columns.anyTime'), row),
        },
        {
          key: 'notInspected',
          header: t('columns.notInspected'),
          numeric: true,
          cell: (row) => batchesLeftOut(row.contamination, 'not-inspected'),
        },
        {
          key: 'tooYoung',
          header: t('columns.tooYoung'),
          numeric: true,
          cell: (row) => batchesLeftOut(row.contamination, 'window-open'),
        },
        { key: 'lost', header: t('columns.lostOther'), numeric: true, cell: (row) => row.lostOtherUnits },
        {
          key: 'yield',
          header: yieldName,
          unit: yieldUnit,
          numeric: true,
          cell: (row) => cell(row.yield, yieldName, row),
        },
        {
          key: 'cropped',
          header: t('columns.cropped'),
          unit: yieldUnit,
          numeric: true,
          cell: (row) => cell(row.yieldOfCropped, t('columns.cropped'), row),
        },
        ...(container === 'log'
          ? [
              {
                key: 'logLife',
                header: t('columns.logLife'),
                unit: '%',
                numeric: true,
                cell: (row: ComparedRow) =>
                  row.logLifeBe === undefined ? '–' : cell(row.logLifeBe, t('columns.logLife'), row),
              },
            ]
          : []),
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
