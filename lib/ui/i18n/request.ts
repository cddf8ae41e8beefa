import { getRequestConfig } from 'next-intl/server';
import { currentLanguage } from '@/lib/access/current-language';
import { readerLocale } from '@/lib/base/reader-locale';
import { loadMessages } from '@/lib/ui/messages/load-messages';

/** Words follow the reader's language, figures the country of their region; dates of the records have no zone. */
export default getRequestConfig(async () => {
  const reader = await currentLanguage();
  return { locale: readerLocale(reader), timeZone: 'UTC', messages: loadMessages(reader.language) };
});
