import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { WeighableBatch } from '@/lib/records/weighing/list-weighable-batches.query';
import type { ChoiceOption } from '../form/field-spec';

/** Batches to choose from: code, species, container and site, as one would read them aloud. */
export async function batchOptions(
  batches: readonly WeighableBatch[],
  language: Language,
): Promise<ChoiceOption[]> {
  const words = await getTranslations('vocabulary.containerKind');
  return batches.map((batch) => {
    const species = language === 'es' ? batch.speciesNameEs : batch.speciesNameEn;
    const kind = words(batch.containerKind).toLocaleLowerCase();
    return { value: batch.id, label: `${batch.code} · ${species}, ${kind} · ${batch.siteName}` };
  });
}
