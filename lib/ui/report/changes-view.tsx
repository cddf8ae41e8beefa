import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatTotalMass } from '@/lib/growing/format-quantity';
import type { DocumentChange } from '@/lib/report/document/document-changes';
import type { ReportChanges } from '@/lib/report/preview-changes.query';
import { DataTable } from '../table/data-table';
import { FiguresThatDiffer } from './figures-that-differ';

type Props = {
  readonly figures: readonly DocumentChange[];
  readonly changes: ReportChanges;
  readonly massUnit: MassUnit;
};

async function SumsTable({ changes, massUnit }: Pick<Props, 'changes' | 'massUnit'>) {
  const t = await getTranslations('report');
  const locale = await getLocale();
  const { sums, siteNames } = changes;
  if (sums === undefined || sums.length === 0) return null;
  const mass = (grams: number) => formatTotalMass(grams, massUnit, locale);
  return (
    <DataTable
      caption={t('sinceSites')}
      rows={sums}
      rowKey={({ part, siteId }) => `${part}/${siteId}`}
      groupOf={({ part }) => t(`indicators.${part === 'residues' ? 'residues' : 'harvest'}`)}
      columns={[
        { key: 'site', header: t('columns.site'), cell: ({ siteId }) => siteNames.get(siteId) ?? '' },
        { key: 'then', header: t('columns.then'), numeric: true, cell: ({ earlier }) => mass(earlier) },
        { key: 'today', header: t('columns.today'), numeric: true, cell: ({ now }) => mass(now) },
      ]}
    />
  );
}

async function EntriesTable({ changes }: Pick<Props, 'changes'>) {
  const t = await getTranslations('report');
  const { entries, siteNames } = changes;
  if (entries.length === 0) return null;
  return (
    <DataTable
      caption={t('sinceEntries')}
      rows={entries}
      rowKey={({ table, siteId }) => `${table}/${siteId}`}
      groupOf={({ table }) => t(`sinceRecords.${table}`)}
      columns={[
        { key: 'site', header: t('columns.site'), cell: ({ siteId }) => siteNames.get(siteId) ?? '' },
        { key: 'created', header: t('columns.created'), numeric: true, cell: (row) => row.created },
        { key: 'changed', header: t('columns.corrected'), numeric: true, cell: (row) => row.changed },
        { key: 'voided', header: t('columns.voided'), numeric: true, cell: (row) => row.voided },
      ]}
    />
  );
}

/** Which figures of a report would differ now, where, and which records are why. */
export async function ChangesView({ figures, changes, massUnit }: Props) {
  const t = await getTranslations('report');
  return (
    <>
      <FiguresThatDiffer figures={figures} then={t('columns.then')} today={t('columns.today')} />
      <SumsTable changes={changes} massUnit={massUnit} />
      <EntriesTable changes={changes} />
    </>
  );
}
