import { getTranslations } from 'next-intl/server';
import { closeReasons, noHarvestAnswers, spentDestinations } from '@/lib/records/batch/close-batch.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** Closing: when, why, where the substrate went; and, with nothing weighed, whether nothing was picked. */
export async function closeFields(days: readonly ChoiceOption[], weighed: boolean): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'date', name: 'closedOn', label: label('fields.closedOn'), quick: days },
    {
      kind: 'radio',
      name: 'closeReason',
      label: label('fields.closeReason'),
      options: closeReasons.map((value) => ({ value, label: words(`closeReason.${value}`) })),
    },
    {
      kind: 'radio',
      name: 'spentDestination',
      label: label('fields.spentDestination'),
      options: spentDestinations.map((value) => ({ value, label: words(`spentDestination.${value}`) })),
    },
    ...(weighed
      ? []
      : [
          {
            kind: 'radio',
            name: 'noHarvest',
            label: label('fields.noHarvest'),
            hint: t('hints.noHarvest'),
            options: noHarvestAnswers.map((value) => ({ value, label: words(`noHarvest.${value}`) })),
          } satisfies FieldSpec,
        ]),
    { kind: 'hidden', name: 'batchId' },
  ];
}
