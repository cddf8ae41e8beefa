import { getRequestConfig } from 'next-intl/server';
import { currentLanguage } from '@/lib/access/current-language';
import { readerLocale } from '@/lib/base/reader-locale';
import { loadMessages } from '@/lib/ui/messages/load-messages';

/**
 * Words follow the reader's language, figures the country of their region; dates of the records have no zone. A locale
 * asked for by name, such as that of a report for somebody else, comes first.
 */
export default getRequestConfig(async ({ locale }) => {
  if (locale !== undefined)
    return { locale, timeZone: 'UTC', messages: loadMessages(locale.startsWith('es') ? 'es' : 'en') };
  const reader = await currentLanguage();
  return { locale: readerLocale(reader), timeZone: 'UTC', messages: loadMessages(reader.language) };
});
