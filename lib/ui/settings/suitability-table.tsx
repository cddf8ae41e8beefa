import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { SuitabilityLine, SuitabilityList } from '@/lib/records/settings/list-suitability.query';
import { Link } from '../page/link';
import { Status } from '../page/status';
import { DataTable } from '../table/data-table';
import { suitabilityNames, toneOfVerdict } from './suitability-words';

type Props = {
  readonly list: SuitabilityList;
  readonly caption: string;
  readonly rows: readonly SuitabilityLine[];
  readonly language: Language;
};

/** Rows of the table with verdict and reason; each leads to its form. */
export async function SuitabilityTable({ list, caption, rows, language }: Props) {
  const t = await getTranslations('settings.suitability');
  const words = await getTranslations('vocabulary.suitabilityVerdict');
  const { subject } = await suitabilityNames(list, language);
  return (
    <DataTable
      caption={caption}
      rows={rows}
      rowKey={(row) => row.id}
      columns={[
        {
          key: 'subject',
          header: t('columns.subject'),
          cell: (row) => <Link href={`/settings/suitability/${row.id}` as Route}>{subject(row)}</Link>,
        },
        {
          key: 'verdict',
          header: t('columns.verdict'),
          cell: (row) => <Status tone={toneOfVerdict[row.verdict]} word={words(row.verdict)} />,
        },
        { key: 'reason', header: t('columns.reason'), cell: (row) => row[language] },
      ]}
    />
  );
}
