import { getTranslations } from 'next-intl/server';
import { mixed, together } from '@/lib/analysis/comparison/comparison-filter.input';
import type { ComparisonPage } from '@/lib/analysis/comparison/read-comparison';
import type { Language } from '@/lib/database/generated/enums';
import { formatDate } from '../format/date-text';

/** Which batches are compared, in one sentence, so that a printed page says it too. */
export async function scopeSentence(
  { choices, filter }: Pick<ComparisonPage, 'choices' | 'filter'>,
  language: Language,
  locale: string,
) {
  const t = await getTranslations('comparison');
  const words = await getTranslations('vocabulary.containerKind');
  const species = choices.species.find((one) => one.id === filter.species)?.[language];
  const material =
    filter.material === together
      ? t('scope.anyMaterial')
      : filter.material === mixed
        ? t('scope.mixedMaterial')
        : (choices.materials.find((one) => one.id === filter.material)?.[language] ?? '–');
  return t('scope.sentence', {
    species: filter.species === together ? t('scope.allSpecies') : (species ?? '–'),
    container: words(filter.container).toLocaleLowerCase(),
    material,
    from: formatDate(filter.from, locale),
    to: formatDate(filter.to, locale),
  });
}
