import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { IntakeFileLine } from '@/lib/intake/table/list-files';
import { formatInstant } from '../format/instant-text';
import { formatNumber } from '../format/number-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';

type Props = { readonly files: readonly IntakeFileLine[]; readonly timeZone: string };

/** Tables that were brought before, newest first. */
export async function FileList({ files, timeZone }: Props) {
  const t = await getTranslations('import');
  const words = await getTranslations('vocabulary.intakeState');
  const locale = await getLocale();
  if (files.length === 0) return <p className="quiet">{t('list.none')}</p>;
  return (
    <DataTable
      caption={t('list.caption')}
      rows={files}
      rowKey={({ id }) => id}
      columns={[
        {
          key: 'file',
          header: t('list.file'),
          cell: ({ id, fileName }) => <Link href={`/import/${id}` as Route}>{fileName}</Link>,
        },
        {
          key: 'state',
          header: t('list.state'),
          cell: ({ state }) =>
            state === 'stopped' || state === 'waiting' ? t(`state.${state}`) : words(state),
        },
        { key: 'kind', header: t('list.kind'), cell: ({ kind }) => t(`kinds.${kind}`) },
        {
          key: 'rows',
          header: t('list.rows'),
          numeric: true,
          cell: ({ rows }) => formatNumber(rows, locale),
        },
        { key: 'site', header: t('list.site'), cell: ({ siteName }) => siteName ?? '–' },
        {
          key: 'when',
          header: t('list.when'),
          cell: ({ createdAt }) => formatInstant(new Date(createdAt), timeZone, locale),
        },
      ]}
    />
  );
}
