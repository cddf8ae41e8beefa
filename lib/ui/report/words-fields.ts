import { getTranslations } from 'next-intl/server';
import type { ReportIndicator } from '@/lib/report/content/report-indicators.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** The words of a report: its title, and what stands before the figures of each part that it tells. */
export async function wordsFields(indicators: readonly ReportIndicator[]): Promise<FieldSpec[]> {
  const t = await getTranslations('report');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    { kind: 'text', name: 'title', label: sentenceCase(t('fields.title')) },
    ...(['opening', ...indicators, 'closing'] as const).map(
      (place): FieldSpec => ({
        kind: 'paragraph',
        name: `words.${place}`,
        label: sentenceCase(t(`fields.words.${place}`)),
        optional: true,
      }),
    ),
  ];
}
