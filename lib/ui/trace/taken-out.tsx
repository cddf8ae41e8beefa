import type { Trace } from '@/lib/records/trace/trace-view';
import { DataTable } from '../table/data-table';
import type { TraceWords } from './trace-words';
import { TracedName } from './traced-name';

type Props = { readonly trace: Trace; readonly words: TraceWords };

/** Links that were recorded once and do not count any more, with the reason. */
export function TakenOut({ trace, words }: Props) {
  const { t } = words;
  const rows = [...trace.back.takenOut, ...trace.on.takenOut].map((link, row) => ({ ...link, row }));
  if (rows.length === 0) return null;
  return (
    <section>
      <h2>{t('takenOut.heading')}</h2>
      <DataTable
        caption={t('takenOut.text')}
        rows={rows}
        rowKey={({ row }) => String(row)}
        columns={[
          {
            key: 'from',
            header: t('columns.from'),
            cell: ({ from }) => <TracedName name={trace.names.get(from.id)} words={words} />,
          },
          {
            key: 'into',
            header: t('columns.into'),
            cell: ({ to }) => <TracedName name={trace.names.get(to.id)} words={words} />,
          },
          {
            key: 'reason',
            header: t('columns.reason'),
            roomy: true,
            cell: ({ voided, withdrawn }) => {
              if (withdrawn) return t('takenOut.withdrawn', { reason: voided ?? '' });
              return voided === '' ? t('takenOut.unknown') : voided;
            },
          },
        ]}
      />
    </section>
  );
}
