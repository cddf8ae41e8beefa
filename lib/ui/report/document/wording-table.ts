import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { ReportIndicator } from '@/lib/report/content/report-indicators.input';
import type { DocumentTable } from '@/lib/report/document/report-document';
import type { ReportTongue } from './report-tongue';

/** Wordings that public funders have used, and the part of the report that answers each. */
const wordings = [
  ['foodProduced', 'harvest'],
  ['proteinProduced', 'protein'],
  ['residuesDiverted', 'residues'],
  ['practicesAdopted', 'practices'],
  ['peopleTrained', 'trainings'],
  ['salesChange', 'sales'],
  ['profit', 'costs'],
  ['qualityOfPractice', 'methods'],
] as const satisfies readonly (readonly [string, ReportIndicator])[];

/** Where a funder finds what their form asks for, of the indicators that the report tells. */
export function wordingTable({ indicators }: FunderReportContent, tongue: ReportTongue): DocumentTable {
  const { t } = tongue;
  return {
    key: 'wordings',
    caption: t('wordings.caption'),
    columns: [
      { key: 'asked', header: t('columns.asked'), numeric: false },
      { key: 'where', header: t('columns.where'), numeric: false },
    ],
    rows: [
      {
        key: 'taking-part',
        cells: [{ text: t('wordings.takingPart') }, { text: t('glanceHeading') }],
      },
      ...wordings
        .filter(([, indicator]) => indicators.includes(indicator))
        .map(([wording, indicator]) => ({
          key: wording,
          cells: [{ text: t(`wordings.${wording}`) }, { text: t(`indicators.${indicator}`) }],
        })),
    ],
  };
}
