import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { formatMass } from '@/lib/growing/format-quantity';
import { placeNames } from '@/lib/ui/comparison/place-names';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { formatDate } from '@/lib/ui/format/date-text';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function RowsBehindPage({ searchParams }: PageProps<'/comparison/rows'>) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const behind = await readAs(actor, (context) => readRowsBehind(context, address, new Date()));
  if (!behind) return <NotThere />;
  const { choices, filter, rows, total } = behind;
  const t = await getTranslations('comparison');
  const reasons = await getTranslations('figures.leftOut');
  const locale = await getLocale();
  const names = await placeNames(choices, actor.language);
  const bagLike = filter.container !== 'bed' && filter.container !== 'log';
  const { method: _method, site: _site, ...all } = filter;
  return (
    <>
      <Heading
        text={t('rowsHeading', {
          method: names.methodName(filter.method),
          site: names.siteName(filter.site),
        })}
      />
      <p>{await scopeSentence(behind, actor.language, locale)}</p>
      <p>{t('rowsNote', { shown: rows.length, total })}</p>
      <DataTable
        caption={t('rowsCaption')}
        rows={rows}
        rowKey={(row) => row.id}
        columns={[
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
            header: t('columns.count'),
            numeric: true,
            cell: (row) =>
              row.contaminated === null
                ? row.contaminationLeftOut && reasons(row.contaminationLeftOut)
                : t('ofUnits', { events: row.contaminated, units: row.units }),
          },
          {
            key: 'fresh',
            header: t('columns.fresh'),
            numeric: true,
            cell: (row) =>
              row.freshGrams === null
                ? row.yieldLeftOut && reasons(row.yieldLeftOut)
                : formatMass(row.freshGrams, actor.massUnit, locale),
          },
          ...(bagLike
            ? [
                {
                  key: 'dry',
                  header: t('columns.dry'),
                  numeric: true,
                  cell: (row: (typeof rows)[number]) =>
                    row.over === null ? '–' : formatMass(row.over, actor.massUnit, locale),
                },
              ]
            : []),
        ]}
      />
      <p className="no-print">
        <Link href={`/comparison?${queryOfFilter({ ...all, method: undefined, site: undefined })}` as Route}>
          {t('back')}
        </Link>
      </p>
    </>
  );
}
