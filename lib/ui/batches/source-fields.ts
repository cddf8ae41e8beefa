import { getTranslations } from 'next-intl/server';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** Spent batches that gave units to a second life, one row each. */
export async function sourceFields(
  batches: readonly ChoiceOption[],
  rows: readonly number[],
): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const common = await getTranslations('common');
  return rows.flatMap((row): FieldSpec[] => [
    {
      kind: 'select',
      name: `sources.${row}.batchId`,
      label: t('furtherSource', { number: row + 1 }),
      options: batches,
      emptyLabel: common('none'),
      ...(row === 0 ? {} : { optional: true }),
    },
    {
      kind: 'whole',
      name: `sources.${row}.units`,
      label: sentenceCase(t('fields.sources.units')),
      ...(row === 0 ? {} : { optional: true }),
    },
  ]);
}
