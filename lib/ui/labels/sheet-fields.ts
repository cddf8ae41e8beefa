import { getLocale, getTranslations } from 'next-intl/server';
import type { OwnSheet } from '@/lib/records/label/list-label-sheets.query';
import type { FieldSpec, FormState } from '../form/field-spec';
import { formatNumber } from '../format/number-text';
import { sentenceCase } from '../format/sentence-case';

const page = ['pageWidthMm', 'pageHeightMm'] as const;
const label = ['labelWidthMm', 'labelHeightMm'] as const;
const edges = ['leftMm', 'topMm', 'gapAcrossMm', 'gapDownMm'] as const;
const counts = ['columns', 'rows'] as const;

/** A sheet as its packet describes it, measured with a ruler where it does not. */
export async function sheetFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('labels');
  const lengths = (names: readonly (typeof page | typeof label | typeof edges)[number][]): FieldSpec[] =>
    names.map((name) => ({ kind: 'decimal', name, label: sentenceCase(t(`fields.${name}`)), suffix: 'mm' }));
  return [
    { kind: 'text', name: 'name', label: sentenceCase(t('fields.name')), hint: t('nameHint') },
    { kind: 'group', name: 'page', legend: t('groups.page'), hint: t('pageHint'), fields: lengths(page) },
    {
      kind: 'group',
      name: 'label',
      legend: t('groups.label'),
      fields: [
        ...lengths(label),
        ...counts.map(
          (name): FieldSpec => ({ kind: 'whole', name, label: sentenceCase(t(`fields.${name}`)) }),
        ),
      ],
    },
    { kind: 'group', name: 'edges', legend: t('groups.edges'), hint: t('edgesHint'), fields: lengths(edges) },
  ];
}

/** What the boxes of a correction hold, as the reader writes numbers. */
export async function sheetValues(sheet: OwnSheet): Promise<FormState['values']> {
  const locale = await getLocale();
  const lengths = [...page, ...label, ...edges].map(
    (name) => [name, formatNumber(sheet[name], locale, Number.isInteger(sheet[name]) ? 0 : 2)] as const,
  );
  return {
    ...{ id: sheet.id, revision: String(sheet.revision), name: sheet.name },
    ...{ columns: String(sheet.columns), rows: String(sheet.rows) },
    ...Object.fromEntries(lengths),
  };
}
