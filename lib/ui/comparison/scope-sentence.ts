import { getTranslations } from 'next-intl/server';
import type { ComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import type { Language } from '@/lib/database/generated/enums';
import { formatDate } from '../format/date-text';
import { placeNames } from './place-names';

/** Which batches are compared, in one sentence, so that a printed page says it too. */
export async function scopeSentence(
  { choices, filter }: Pick<ComparisonPage, 'choices' | 'filter'>,
  language: Language,
  locale: string,
) {
  const t = await getTranslations('comparison');
  const words = await getTranslations('vocabulary.containerKind');
  const names = await placeNames(choices, language);
  return t('scope.sentence', {
    species: names.speciesName(filter.species),
    container: words(filter.container).toLocaleLowerCase(),
    material: names.materialName(filter.material),
    from: formatDate(filter.from, locale),
    to: formatDate(filter.to, locale),
  });
}
