import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { formatTotalMass } from '@/lib/growing/format-quantity';
import type { ListedBatch } from '@/lib/records/batch/list-batches.query';
import { formatDate } from '../format/date-text';
import { formatBedYield, formatLogMass } from '../format/yield-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';

type Props = {
  readonly batches: readonly ListedBatch[];
  readonly language: Language;
  readonly unit: MassUnit;
};

/** Batches, one a row, each leading to its page. */
export async function BatchTable({ batches, language, unit }: Props) {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
  const method = (batch: ListedBatch) =>
    batch.mixedMethod ? t('mixedMethod') : (batch.method?.[language] ?? t('noMethod'));
  const state = (batch: ListedBatch) =>
    [
      batch.voided ? t('state.voided') : t(batch.closedOn === null ? 'state.open' : 'state.closed'),
      ...(batch.secondLife ? [t('state.secondLife')] : []),
    ].join(', ');
  const yieldOf = ({ bedYield, logYield }: ListedBatch): string => {
    if (bedYield?.kind === 'value') return formatBedYield(bedYield.value, unit, locale);
    return logYield?.kind === 'value'
      ? t('figures.perLogYear', { mass: formatLogMass(logYield.value, unit, locale) })
      : '';
  };
  return (
    <DataTable
      caption={t('list.caption')}
      rows={batches}
      rowKey={(batch) => batch.id}
      columns={[
        {
          key: 'code',
          header: t('list.columns.code'),
          cell: (batch) => (
            <>
              <Link href={`/batches/${batch.id}` as Route}>{batch.code}</Link>
              <span className="cell-reason">{batch.species[language]}</span>
            </>
          ),
        },
        {
          key: 'inoculatedOn',
          header: t('list.columns.inoculatedOn'),
          cell: (batch) => formatDate(batch.inoculatedOn, locale),
        },
        {
          key: 'units',
          header: t('list.columns.units'),
          cell: (batch) => words(batch.containerKind, { count: batch.unitCount }),
        },
        {
          key: 'contaminated',
          header: t('list.columns.contaminated'),
          numeric: true,
          cell: (batch) => t('figures.ofUnits', { count: batch.contaminated, total: batch.unitCount }),
        },
        {
          key: 'fresh',
          header: t('list.columns.fresh'),
          numeric: true,
          cell: (batch) => {
            const own = yieldOf(batch);
            return (
              <>
                {formatTotalMass(batch.freshGrams, unit, locale)}
                {own === '' ? null : <span className="cell-reason">{own}</span>}
              </>
            );
          },
        },
        { key: 'method', header: t('list.columns.method'), cell: method },
        { key: 'site', header: t('list.columns.site'), cell: (batch) => batch.siteName },
        { key: 'state', header: t('list.columns.state'), cell: state },
      ]}
    />
  );
}
