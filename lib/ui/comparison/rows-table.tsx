import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { RowBehind } from '@/lib/analysis/comparison/read-rows-behind';
import type { LeftOutReason } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { readerUnit } from '../figure/reader-unit';
import { formatDate } from '../format/date-text';
import { formatArea } from '../format/length-text';
import { formatNumber } from '../format/number-text';
import { Link } from '../page/link';
import type { Column } from '../table/column-header';
import { DataTable } from '../table/data-table';
import type { PlaceNames } from './place-names';
import { yieldFigureUnit, yieldKind, yieldUnitKey } from './yield-kind';

type Props = {
  readonly rows: readonly RowBehind[];
  readonly names: PlaceNames;
  readonly container: ContainerKind;
  readonly timeZone: string;
  readonly massUnit: MassUnit;
};

/** The batches behind a figure, each with its own figures or the reason why it was left out. */
export async function RowsTable({ rows, names, container, timeZone, massUnit }: Props) {
  const t = await getTranslations('comparison');
  const reasons = await getTranslations('figures.leftOut');
  const locale = await getLocale();
  const view = await loadFigureViews(timeZone, massUnit);
  const kind = yieldKind(container);
  const { factor, digits } = readerUnit(yieldFigureUnit[kind], massUnit);
  const mass = (grams: number | null) => (grams === null ? '–' : formatMass(grams, massUnit, locale));
  const why = (reason: LeftOutReason | null) =>
    reason === null ? '–' : <span className="cell-reason">{reasons(reason)}</span>;
  const contaminated = (row: RowBehind) =>
    row.contaminated === null ? (
      why(row.contaminationLeftOut)
    ) : (
      <>
        {row.rate === null ? null : <FigureCell view={view(row.rate)} />}
        <span className={row.rate === null ? undefined : 'cell-reason'}>
          {t('ofUnits', { events: row.contaminated, units: row.units })}
        </span>
        {row.contaminatedAtAnyTime === row.contaminated ? null : (
          <span className="cell-reason">
            {t('atAnyTime', { events: row.contaminatedAtAnyTime ?? 0, units: row.units })}
          </span>
        )}
      </>
    );
  const divisor: Record<typeof kind, Column<RowBehind>[]> = {
    be: [{ key: 'dry', header: t('columns.dry'), numeric: true, cell: (row) => mass(row.over) }],
    bed: [
      {
        key: 'area',
        header: t('columns.area'),
        numeric: true,
        cell: (row) => (row.over === null ? '–' : formatArea(row.over, massUnit, locale)),
      },
    ],
    log: [],
  };
  const columns: Column<RowBehind>[] = [
    {
      key: 'code',
      header: t('columns.batch'),
      cell: (row) => <Link href={`/batches/${row.id}` as Route}>{row.code}</Link>,
    },
    { key: 'site', header: t('columns.site'), cell: (row) => names.siteName(row.siteId) },
    { key: 'method', header: t('columns.method'), cell: (row) => names.methodName(row.method) },
    {
      key: 'on',
      header: t('columns.inoculatedOn'),
      cell: (row) => formatDate(row.inoculatedOn, locale),
    },
    {
      key: 'contaminated',
      header: t('columns.rate'),
      unit: container === 'bed' ? t('failedBeds') : '%',
      numeric: true,
      cell: contaminated,
    },
    { key: 'fresh', header: t('columns.fresh'), numeric: true, cell: (row) => mass(row.freshGrams) },
    ...divisor[kind],
    {
      key: 'yield',
      header: t(`yieldName.${kind}`),
      unit: t(`yieldUnit.${yieldUnitKey(container, massUnit)}`),
      numeric: true,
      cell: (row) =>
        row.yield === null ? why(row.yieldLeftOut) : formatNumber(row.yield * factor, locale, digits),
    },
  ];
  return <DataTable caption={t('rowsCaption')} rows={rows} rowKey={(row) => row.id} columns={columns} />;
}
