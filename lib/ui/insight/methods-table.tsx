import type { Route } from 'next';
import type { MethodLine } from '@/lib/analysis/method-question/methods-answer';
import { FigureHistory } from '../figure/figure-history';
import { formatInterval } from '../format/interval-text';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';

/** Raw beside adjusted, method by method, and under it how each adjusted figure came about. */
export function MethodsTable({ lines, words }: { lines: readonly MethodLine[]; words: InsightWords }) {
  const { t, names, view, locale } = words;
  const column = (key: 'raw' | 'adjusted' | 'rawYield' | 'adjustedYield') => ({
    key,
    header: t(`methods.columns.${key}`),
    unit: '%',
    numeric: true,
    cell: (line: MethodLine) => <FigureLink figure={line[key]} words={words} />,
  });
  return (
    <>
      <DataTable
        caption={t('methods.table')}
        rows={lines}
        rowKey={(line) => line.method}
        columns={[
          {
            key: 'method',
            header: t('methods.columns.method'),
            cell: (line) => names.methodName(line.method),
          },
          column('raw'),
          column('adjusted'),
          {
            key: 'further',
            header: t('methods.columns.further'),
            unit: '%',
            numeric: true,
            cell: ({ further }) =>
              further === null ? '–' : formatInterval(further.low, further.high, locale),
          },
          column('rawYield'),
          column('adjustedYield'),
        ]}
      />
      <p className="quiet">
        {t('methods.furtherNote')} {t('methods.yieldNote')}
      </p>
      {lines.map((line) => (
        <FigureHistory
          key={line.method}
          view={view(line.adjusted)}
          of={`${names.methodName(line.method)}, ${t('methods.levelled')}`}
          {...(line.adjusted.rowsQuery === ''
            ? {}
            : { rows: `/comparison/rows?${line.adjusted.rowsQuery}` as Route })}
        />
      ))}
    </>
  );
}
