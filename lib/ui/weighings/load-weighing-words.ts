import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { destinations } from '@/lib/growing/vocabulary';
import type { WeighingView } from '@/lib/records/weighing/weighing-view';
import { formatDate } from '../format/date-text';
import { formatMassWithTwin } from '../format/mass-text';
import type { Definition } from '../page/definition-list';

/** A weighing in words, in the reader's language and unit. */
export async function loadWeighingWords(unit: MassUnit) {
  const t = await getTranslations('weighings');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const mass = (grams: number) => formatMass(grams, unit, locale);
  const date = (day: string) => formatDate(day, locale);
  const where = (weighing: WeighingView) => {
    const parts = destinations.flatMap((destination) => {
      const grams = weighing.destinations[destination];
      return grams === undefined ? [] : [{ word: words(`destination.${destination}`), mass: mass(grams) }];
    });
    if (parts.length === 0) return t('notSaid');
    return parts
      .map((part, at) => `${at === 0 ? part.word : part.word.toLocaleLowerCase(locale)} ${part.mass}`)
      .join(', ');
  };
  const facts = (weighing: WeighingView): Definition[] => [
    { label: t('columns.weighedOn'), value: date(weighing.weighedOn) },
    { label: t('columns.fresh'), value: formatMassWithTwin(weighing.freshGrams, unit, locale) },
    { label: t('columns.site'), value: weighing.siteName },
    { label: t('columns.trimState'), value: words(`trimState.${weighing.trimState}`) },
    { label: t('columns.where'), value: where(weighing) },
    ...(weighing.grade === null ? [] : [{ label: t('columns.grade'), value: weighing.grade }]),
    ...(weighing.note === null ? [] : [{ label: t('columns.note'), value: weighing.note }]),
  ];
  const line = (one: WeighingView['lines'][number]) => {
    const text = t(one.shared ? 'lineShared' : 'line', { mass: mass(one.freshGrams), flush: one.flush });
    return one.forcedFlush === null
      ? text
      : `${text}, ${t(one.forcedFlush ? 'forced.wasForced' : 'forced.wasNot')}`;
  };
  return {
    mass,
    massTwin: (grams: number) => formatMassWithTwin(grams, unit, locale),
    date,
    where,
    facts,
    line,
  };
}
