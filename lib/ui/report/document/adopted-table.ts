import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentTable } from '@/lib/report/document/report-document';
import { countCell } from './count-cell';
import { headsCell } from './heads-cell';
import type { ReportTongue } from './report-tongue';

/** Practices written down as taken up: at how many sites, where they stand, and how many growers. */
export function adoptedTable(rows: FunderReportContent['adopted'], tongue: ReportTongue): DocumentTable {
  const { t } = tongue;
  return {
    key: 'adopted',
    caption: t('practices.adoptedCaption'),
    columns: [
      { key: 'practice', header: t('columns.practice'), numeric: false },
      { key: 'adopted', header: t('columns.sitesTakingUp'), numeric: true, unit: ucumCodes.one },
      { key: 'standing', header: t('columns.sitesStanding'), numeric: true, unit: ucumCodes.one },
      { key: 'growers', header: t('columns.growers'), numeric: true, unit: ucumCodes.one },
    ],
    rows: rows.map(({ practice, adopted, standing, growers }) => ({
      key: practice,
      cells: [
        { text: tongue.words(`vocabulary.practiceKind.${practice}`) },
        countCell(adopted, tongue),
        countCell(standing, tongue),
        headsCell(growers, tongue),
      ],
    })),
  };
}
