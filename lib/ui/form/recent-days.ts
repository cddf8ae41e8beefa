import { getLocale, getTranslations } from 'next-intl/server';
import { addDays } from '@/lib/growing/calendar-date';
import { formatDate } from '../format/date-text';
import type { ChoiceOption } from './field-spec';

/**
 * Today, yesterday and another day, as a date field offers them; `today` is the site's own. Of a site that has left, the day
 * of leaving and another day.
 */
export async function recentDays(today: string, leftOn: string | null = null): Promise<ChoiceOption[]> {
  const t = await getTranslations('common');
  if (leftOn !== null)
    return [
      { value: leftOn, label: t('dayOfLeaving', { date: formatDate(leftOn, await getLocale()) }) },
      { value: 'other', label: t('otherDay') },
    ];
  return [
    { value: today, label: t('today') },
    { value: addDays(today, -1), label: t('yesterday') },
    { value: 'other', label: t('otherDay') },
  ];
}
