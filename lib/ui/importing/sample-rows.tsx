import { getTranslations } from 'next-intl/server';
import type { IntakeView } from '@/lib/intake/table/view-file';
import { DataTable } from '../table/data-table';
import { columnName } from './column-name';

const cellLength = 60;

/** The first rows of a table as they came. */
export async function SampleRows({ layout, sample }: Pick<IntakeView, 'layout' | 'sample'>) {
  const t = await getTranslations('import');
  const unnamed = (letter: string) => t('understood.unnamed', { letter });
  return (
    <DataTable
      caption={t('understood.sample')}
      rows={sample}
      rowKey={({ line }) => String(line)}
      columns={[
        { key: 'line', header: t('needs.line'), narrow: true, cell: ({ line }) => line },
        ...layout.columns.map((_, index) => ({
          key: `column ${index}`,
          header: columnName(layout.headers, index, unnamed),
          cell: ({ cells }: IntakeView['sample'][number]) => (cells[index] ?? '').slice(0, cellLength),
        })),
      ]}
    />
  );
}
