import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { ReportIndicator } from '@/lib/report/content/report-indicators.input';
import type { DocumentSection } from '@/lib/report/document/report-document';
import { adoptedTable } from './adopted-table';
import { amountTable } from './amount-table';
import { costSection } from './cost-section';
import { leftOutTable } from './left-out-table';
import { methodTable } from './method-table';
import { methodWords } from './method-words';
import { practiceTable } from './practice-table';
import { proteinTable } from './protein-table';
import type { ReportTongue } from './report-tongue';
import { salesSection } from './sales-section';
import { trainingSection } from './training-section';

type Section = Omit<DocumentSection, 'key' | 'heading' | 'words'>;
/** How an indicator is told. */
export type IndicatorSection = (content: FunderReportContent, tongue: ReportTongue) => Section;

const periodOf = ({ from, to }: FunderReportContent, { date }: ReportTongue) => ({
  from: date(from),
  to: date(to),
});

const harvest: IndicatorSection = (content, tongue) => ({
  paragraphs: [tongue.t('harvestNote', periodOf(content, tongue))],
  tables: [
    amountTable(
      content.harvest,
      { key: 'harvest', caption: tongue.t('harvestCaption'), names: 'destination', assumed: [] },
      tongue,
    ),
  ],
});

const residues: IndicatorSection = (content, tongue) => ({
  paragraphs: [
    ...(content.residuesLeftOut === undefined ? [] : [tongue.t('residuesCounted')]),
    tongue.t('residuesNote', { ...periodOf(content, tongue), without: content.batchesWithoutDryMass }),
  ],
  tables: [
    amountTable(
      content.residues,
      {
        key: 'residues',
        caption: tongue.t('residuesCaption'),
        names: 'materialKind',
        assumed: content.assumedResidues,
      },
      tongue,
    ),
    ...(content.residuesLeftOut?.length ? [leftOutTable(content.residuesLeftOut, tongue)] : []),
  ],
});

const protein: IndicatorSection = ({ protein: rows }, tongue) => ({
  paragraphs: [tongue.t('protein.note')],
  tables: [proteinTable(rows, tongue)],
  notes: [tongue.t('protein.basis'), tongue.t('protein.rule')],
});

const practices: IndicatorSection = ({ practices: rows, adopted }, tongue) => {
  const { t } = tongue;
  const tables = [
    ...(adopted.length === 0 ? [] : [adoptedTable(adopted, tongue)]),
    ...(rows.length === 0 ? [] : [practiceTable(rows, tongue)]),
  ];
  return {
    paragraphs: [t('practices.note')],
    ...(tables.length === 0 ? { notes: [t('practices.none')] } : { tables }),
  };
};

const methods: IndicatorSection = (content, tongue) => ({
  paragraphs: [
    ...methodWords(content.methods, tongue),
    tongue.t('methodsNote', periodOf(content, tongue)),
    tongue.t('howIntervals'),
  ],
  tables: [methodTable(content.methods, tongue)],
});

/** How each indicator is told. */
export const indicatorSections: Record<ReportIndicator, IndicatorSection> = {
  harvest,
  protein,
  residues,
  practices,
  trainings: trainingSection,
  sales: salesSection,
  costs: costSection,
  methods,
};
