import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { FunderReportContent, ReportCell } from '@/lib/report/funder-report';
import { dynamicWords } from '../i18n/dynamic-words';
import { DataTable } from '../table/data-table';

type Props = {
  readonly caption: string;
  readonly table: FunderReportContent['harvest'];
  /** Which words of the vocabulary name the cells. */
  readonly names: 'destination' | 'materialKind';
  readonly massUnit: MassUnit;
  /** Cells that rest partly on an assumed moisture. */
  readonly assumed: readonly string[];
};

/** Masses by kind with their total; protected cells say that they are, and why nothing stands there. */
export async function AmountTable({ caption, table, names, massUnit, assumed }: Props) {
  const t = await getTranslations('report');
  const words = await dynamicWords();
  const locale = await getLocale();
  const nameOf = (cell: ReportCell) => {
    if (cell.key === 'total') return t('total');
    if (cell.key === 'unsaid') return t('unsaid');
    if (cell.key === 'mixed') return t('mixedMaterials');
    return words(`vocabulary.${names}.${cell.key}`);
  };
  return (
    <DataTable
      caption={caption}
      rows={[...table.cells, table.total]}
      rowKey={(cell) => cell.key}
      isTotal={(cell) => cell.key === 'total'}
      columns={[
        { key: 'name', header: t('columns.kind'), cell: nameOf },
        {
          key: 'mass',
          header: t('columns.mass'),
          numeric: true,
          cell: (cell) =>
            cell.kind === 'protected' ? (
              <span className="quiet">{t('protected')}</span>
            ) : (
              <>
                {formatMass(cell.amount, massUnit, locale)}
                {assumed.includes(cell.key) ? <span className="quiet"> {t('assumed')}</span> : null}
              </>
            ),
        },
        {
          key: 'sites',
          header: t('columns.sites'),
          numeric: true,
          cell: (cell) => (cell.kind === 'shown' ? cell.sites : '–'),
        },
      ]}
    />
  );
}
