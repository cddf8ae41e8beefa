import { getTranslations } from 'next-intl/server';
import type { ComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import type { Language } from '@/lib/database/generated/enums';
import { formatDate } from '../format/date-text';
import { sitesLeftSentences } from '../leaving/sites-left-sentences';
import { placeNames } from './place-names';

/** Which batches are compared, in one sentence, and whether sites have left, so that a printed page says it too. */
export async function scopeSentence(
  { choices, filter }: Pick<ComparisonPage, 'choices' | 'filter'>,
  language: Language,
  locale: string,
) {
  const t = await getTranslations('comparison');
  const words = await getTranslations('vocabulary.containerKind');
  const names = await placeNames(choices, language);
  const sentence = t('scope.sentence', {
    species: names.speciesName(filter.species),
    container: words(filter.container).toLocaleLowerCase(),
    material: names.materialName(filter.material),
    from: formatDate(filter.from, locale),
    to: formatDate(filter.to, locale),
  });
  return [sentence, ...sitesLeftSentences(choices.sitesLeft, await getTranslations('leaving'))].join(' ');
}
