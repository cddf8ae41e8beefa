import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import type { FigureView } from '../../figure/figure-view';
import type { ReportTongue } from './report-tongue';

type Row = FunderReportContent['methods'][number];

function historyLines({ history, marks, size }: FigureView, { t }: ReportTongue): string[] {
  const basis = [history.parts, size.join(', ')].filter((text) => text !== '').join('; ');
  return [
    t('history.basedOn', { basis }),
    ...history.leftOut.map((line) => t('history.leftOut', { line })),
    ...marks,
    `${history.method}. ${history.clusteredBy}.`,
    ...(history.source === '' ? [] : [t('history.source', { source: history.source })]),
    t('history.asOf', { date: history.asOf }),
  ];
}

/** The figure as numbers, where there is one. */
function plottedValue({ plotted, unit }: FigureView): Pick<DocumentCell, 'value' | 'interval' | 'unit'> {
  if (plotted === undefined) return {};
  const { estimate, low, high } = plotted;
  const interval = low === undefined || high === undefined ? {} : { interval: { low, high } };
  return { value: estimate, unit, ...interval };
}

function figureCell(figure: Row['yield'], tongue: ReportTongue): DocumentCell {
  if (figure.kind === 'protected') return { text: tongue.t('protected') };
  // Stored as the analysis made it; the report's schema has checked the kind.
  const seen = tongue.view(figure as unknown as ShownFigure);
  const unit = seen.unit === '' ? '' : `\u00a0${seen.unit}`;
  const interval = seen.interval === '' ? '' : ` (${seen.interval})`;
  const marked = seen.marks.length === 0 ? '' : '*';
  return {
    text: `${seen.estimate}${unit}${interval}${marked}`,
    ...plottedValue(seen),
    below: [seen.reason, ...seen.size.slice(0, 2)].filter((text) => text !== '').join(', '),
    history: historyLines(seen, tongue),
  };
}

/** Contamination and yield by method, container kinds apart, each with its interval or the reason why there is none. */
export function methodTable(rows: readonly Row[], tongue: ReportTongue): DocumentTable {
  const { t, words, own } = tongue;
  return {
    key: 'methods',
    caption: t('methodsCaption'),
    columns: [
      { key: 'method', header: t('columns.method'), numeric: false },
      { key: 'contamination', header: t('columns.contamination'), numeric: true },
      { key: 'yield', header: t('columns.yield'), numeric: true },
    ],
    rows: rows.map((row) => ({
      key: `${row.container} ${row.methodEn}`,
      group: words(`vocabulary.containerKind.${row.container}`),
      cells: [
        { text: own({ en: row.methodEn, es: row.methodEs }) },
        figureCell(row.contamination, tongue),
        figureCell(row.yield, tongue),
      ],
    })),
  };
}
