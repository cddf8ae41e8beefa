import { getTranslations } from 'next-intl/server';
import { addDays } from '@/lib/growing/calendar-date';
import type { ChoiceOption } from './field-spec';

/** Today, yesterday and another day, as a date field offers them; `today` is the site's own. */
export async function recentDays(today: string): Promise<ChoiceOption[]> {
  const t = await getTranslations('common');
  return [
    { value: today, label: t('today') },
    { value: addDays(today, -1), label: t('yesterday') },
    { value: 'other', label: t('otherDay') },
  ];
}
