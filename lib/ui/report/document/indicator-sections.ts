import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { ReportIndicator } from '@/lib/report/content/report-indicators.input';
import type { DocumentSection } from '@/lib/report/document/report-document';
import { amountTable } from './amount-table';
import { methodTable } from './method-table';
import { practiceTable } from './practice-table';
import { proteinTable } from './protein-table';
import type { ReportTongue } from './report-tongue';

type Section = Omit<DocumentSection, 'key' | 'heading' | 'words'>;
type SectionOf = (content: FunderReportContent, tongue: ReportTongue) => Section;

const periodOf = ({ from, to }: FunderReportContent, { date }: ReportTongue) => ({
  from: date(from),
  to: date(to),
});

const harvest: SectionOf = (content, tongue) => ({
  paragraphs: [tongue.t('harvestNote', periodOf(content, tongue))],
  tables: [
    amountTable(
      content.harvest,
      { key: 'harvest', caption: tongue.t('harvestCaption'), names: 'destination', assumed: [] },
      tongue,
    ),
  ],
});

const residues: SectionOf = (content, tongue) => ({
  paragraphs: [
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
  ],
});

const protein: SectionOf = ({ protein: rows }, tongue) => ({
  paragraphs: [tongue.t('protein.note')],
  tables: [proteinTable(rows, tongue)],
  notes: [tongue.t('protein.basis'), tongue.t('protein.rule')],
});

const practices: SectionOf = ({ practices: rows }, tongue) => ({
  paragraphs: [tongue.t('practices.note')],
  ...(rows.length === 0
    ? { notes: [tongue.t('practices.none')] }
    : { tables: [practiceTable(rows, tongue)] }),
});

const methods: SectionOf = (content, tongue) => ({
  paragraphs: [tongue.t('methodsNote', periodOf(content, tongue)), tongue.t('howIntervals')],
  tables: [methodTable(content.methods, tongue)],
});

/** How each indicator is told; one that is not in this table has no section. */
export const indicatorSections: Partial<Record<ReportIndicator, SectionOf>> = {
  harvest,
  protein,
  residues,
  practices,
  methods,
};
