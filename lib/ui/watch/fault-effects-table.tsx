import { getLocale, getTranslations } from 'next-intl/server';
import type { RecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import { formatInterval } from '../format/interval-text';
import { FigureLink } from '../insight/figure-link';
import type { InsightWords } from '../insight/insight-words';
import { DataTable } from '../table/data-table';
import { sideOfCounted } from './side-of-counted';

type Props = { readonly effects: RecordFaults['effects']; readonly words: InsightWords };

/** What missing records do to the contamination rate and the yield, one kind of container a row. */
export async function FaultEffectsTable({ effects, words }: Props) {
  const t = await getTranslations('watch.records');
  const kinds = await getTranslations('vocabulary.containerKind');
  const locale = await getLocale();
  const share = (count: number, of: number, percent: number | null) =>
    percent === null
      ? '–'
      : t('ofDue', {
          count: words.number(count),
          of: words.number(of),
          share: words.number(percent),
        });
  return (
    <>
      <DataTable
        caption={t('table')}
        rows={effects}
        rowKey={({ container }) => container}
        columns={[
          { key: 'container', header: t('columns.container'), cell: ({ container }) => kinds(container) },
          {
            key: 'uninspected',
            header: t('columns.uninspected'),
            numeric: true,
            cell: ({ uninspected, due, uninspectedPercent }) => share(uninspected, due, uninspectedPercent),
          },
          {
            key: 'figure',
            header: t('columns.figure'),
            unit: '%',
            numeric: true,
            cell: ({ figure }) => <FigureLink figure={figure} words={words} />,
          },
          {
            key: 'bounds',
            header: t('columns.bounds'),
            unit: '%',
            numeric: true,
            cell: ({ rate }) =>
              rate === null ? (
                '–'
              ) : (
                <>
                  {formatInterval(rate.low, rate.high, locale)}
                  {sideOfCounted(rate) === 'above' ? (
                    <span className="quiet block">{t('boundsAbove')}</span>
                  ) : null}
                </>
              ),
          },
          {
            key: 'yieldLeftOut',
            header: t('columns.yieldLeftOut'),
            numeric: true,
            cell: ({ yieldLeftOut, yieldDue, yieldLeftOutPercent }) =>
              share(yieldLeftOut, yieldDue, yieldLeftOutPercent),
          },
        ]}
      />
      <p className="quiet">{t('boundsNote')}</p>
    </>
  );
}
