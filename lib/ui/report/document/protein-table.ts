import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import { amountCell } from './amount-cell';
import type { ReportTongue } from './report-tongue';

type Row = FunderReportContent['protein'][number];

function limitCells(range: Row['range'], tongue: ReportTongue): [DocumentCell, DocumentCell, DocumentCell] {
  const { t, mass, massValue } = tongue;
  if (range.kind !== 'range') {
    const text = t(range.kind === 'protected' ? 'protected' : 'protein.outsideTable');
    return [{ text }, { text: '–' }, { text: '–' }];
  }
  const { lowGrams, highGrams, byRule } = range;
  return [
    { text: mass(lowGrams), value: massValue(lowGrams) },
    { text: mass(highGrams), value: massValue(highGrams) },
    {
      text: byRule ? t('protein.fromTo', { low: mass(byRule.lowGrams), high: mass(byRule.highGrams) }) : '–',
    },
  ];
}

/** Protein by species as a range, with the rule of thumb beside it. */
export function proteinTable(rows: readonly Row[], tongue: ReportTongue): DocumentTable {
  const { t, massUcum, own } = tongue;
  return {
    key: 'protein',
    caption: t('protein.caption'),
    columns: [
      { key: 'species', header: t('columns.species'), numeric: false },
      { key: 'fresh', header: t('columns.fresh'), numeric: true, unit: massUcum },
      { key: 'low', header: t('columns.proteinLow'), numeric: true, unit: massUcum },
      { key: 'high', header: t('columns.proteinHigh'), numeric: true, unit: massUcum },
      { key: 'rule', header: t('columns.proteinRule'), numeric: true },
    ],
    rows: rows.map((row) => ({
      key: row.fresh.key,
      cells: [
        { text: own({ en: row.speciesEn, es: row.speciesEs }) },
        amountCell(row.fresh, tongue),
        ...limitCells(row.range, tongue),
      ],
    })),
  };
}
