import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentTable } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import type { ReportTongue } from './report-tongue';

/** Sites that took up each treatment; few of them are not told. */
export function practiceTable(rows: FunderReportContent['practices'], tongue: ReportTongue): DocumentTable {
  const { t, own, locale } = tongue;
  return {
    key: 'practices',
    caption: t('practices.caption'),
    columns: [
      { key: 'method', header: t('columns.method'), numeric: false },
      { key: 'sites', header: t('columns.sitesTakingUp'), numeric: true, unit: ucumCodes.one },
    ],
    rows: rows.map(({ methodEn, methodEs, sites }) => ({
      key: sites.key,
      cells: [
        { text: own({ en: methodEn, es: methodEs }) },
        sites.kind === 'shown'
          ? { text: formatNumber(sites.amount, locale), value: sites.amount }
          : { text: t('protected') },
      ],
    })),
  };
}
