import { getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import type { FunderReportContent } from '@/lib/report/funder-report';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { dynamicWords } from '../i18n/dynamic-words';
import { DataTable } from '../table/data-table';

type Row = FunderReportContent['methods'][number];

type Props = {
  readonly rows: readonly Row[];
  readonly language: Language;
  readonly timeZone: string;
  readonly massUnit: MassUnit;
};

/** Contamination and yield by method, container kinds apart, each with its interval or the reason why there is none. */
export async function MethodTable({ rows, language, timeZone, massUnit }: Props) {
  const t = await getTranslations('report');
  const words = await dynamicWords();
  const view = await loadFigureViews(timeZone, massUnit);
  const cell = (figure: Row['yield']) => {
    if (figure.kind === 'protected') return <span className="quiet">{t('protected')}</span>;
    // Stored as the analysis made it; the report's schema has checked the kind.
    const seen = view(figure as unknown as ShownFigure);
    return (
      <>
        <FigureCell view={seen} />
        {seen.unit === '' ? null : <span className="quiet"> {seen.unit}</span>}
        <span className="cell-reason">{seen.size.slice(0, 2).join(', ')}</span>
      </>
    );
  };
  return (
    <DataTable
      caption={t('methodsCaption')}
      rows={rows}
      rowKey={(row) => `${row.container} ${row.methodEn}`}
      groupOf={(row) => words(`vocabulary.containerKind.${row.container}`)}
      columns={[
        {
          key: 'method',
          header: t('columns.method'),
          cell: (row) => (language === 'es' ? row.methodEs : row.methodEn),
        },
        {
          key: 'contamination',
          header: t('columns.contamination'),
          numeric: true,
          cell: (row) => cell(row.contamination),
        },
        { key: 'yield', header: t('columns.yield'), numeric: true, cell: (row) => cell(row.yield) },
      ]}
    />
  );
}
