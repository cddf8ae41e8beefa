import type { ReportHeads } from '@/lib/report/content/funder-report';
import type { DocumentFact, DocumentSection } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import { amountCell } from './amount-cell';
import type { ReportToTell } from './build-document';
import { countCell } from './count-cell';
import { headsCell } from './heads-cell';
import type { ReportTongue } from './report-tongue';

/** Reports of the first form hold bare numbers. */
const asHeads = (people: number | ReportHeads): ReportHeads =>
  typeof people === 'number' ? { kind: 'shown', people } : people;

/** Who took part, in three numbers. */
export function glanceSection({ content }: ReportToTell, tongue: ReportTongue): DocumentSection {
  const { t, locale } = tongue;
  const { sitesActive, peopleActive, batchesStarted } = content;
  const started =
    typeof batchesStarted === 'number'
      ? { key: 'started', kind: 'shown' as const, amount: batchesStarted, sites: sitesActive }
      : batchesStarted;
  const facts: DocumentFact[] = [
    {
      key: 'sitesActive',
      label: t('sitesActive'),
      text: formatNumber(sitesActive, locale),
      value: sitesActive,
    },
    { key: 'peopleActive', label: t('peopleActive'), ...headsCell(asHeads(peopleActive), tongue) },
    { key: 'batchesStarted', label: t('batchesStarted'), ...countCell(started, tongue) },
  ];
  const { harvest, residues } = content;
  const both = harvest.total.kind === 'shown' && residues.total.kind === 'shown';
  const said = both
    ? t('glanceSaid', {
        sites: sitesActive,
        fresh: amountCell(harvest.total, tongue).text,
        dry: amountCell(residues.total, tongue).text,
      })
    : t('glanceFew', { sites: sitesActive });
  return { key: 'glance', heading: t('glanceHeading'), paragraphs: [said], facts, notes: [t('peopleNote')] };
}
