import { getLocale, getTranslations } from 'next-intl/server';
import type { FormWords } from './form-words';

/** The words of every form, in the reader's language. */
export async function loadFormWords(): Promise<FormWords> {
  const t = await getTranslations('common');
  return {
    problemTitle: t('problemTitle'),
    errorPrefix: t('errorPrefix'),
    optional: t('optional'),
    confirmTitle: t('confirmTitle'),
    confirmIntro: t('confirmIntro'),
    confirmBox: t('confirmBox'),
    saving: t('saving'),
    chooseOne: t('chooseOne'),
    unit: t('unit'),
    day: t('day'),
    month: t('month'),
    year: t('year'),
    time: t('time'),
    dateExample: t('dateExample'),
    timeExample: t('timeExample'),
    product: t('product'),
    understood: t.raw('understood') as string,
    twoReadings: t.raw('twoReadings') as string,
    notUnderstood: t('notUnderstood'),
    locale: await getLocale(),
  };
}
