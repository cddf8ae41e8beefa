import { getTranslations } from 'next-intl/server';
import type { DocumentChange } from '@/lib/report/document/document-changes';
import { DataTable } from '../table/data-table';

type Props = {
  readonly figures: readonly DocumentChange[];
  readonly then: string;
  readonly today: string;
};

/** Each figure that two states of a report tell differently. `then` and `today` head the two. */
export async function FiguresThatDiffer({ figures, then, today }: Props) {
  const t = await getTranslations('report');
  const place = ({ section, row, column }: DocumentChange) =>
    [row, column].filter((text) => text !== '').join(': ') || section;
  // An interval stays in one line; it may stand under its estimate.
  const figure = (text: string | undefined) => (
    <span className="may-wrap">{(text ?? t('absent')).replaceAll('–', '\u2060–\u2060')}</span>
  );
  return (
    <DataTable
      caption={t('sinceCaption')}
      rows={figures}
      rowKey={({ key }) => key}
      groupOf={({ section }) => section}
      columns={[
        { key: 'row', header: t('columns.row'), cell: place },
        {
          key: 'then',
          header: then,
          numeric: true,
          cell: ({ earlier }) => figure(earlier),
        },
        { key: 'today', header: today, numeric: true, cell: ({ now }) => figure(now) },
      ]}
    />
  );
}
