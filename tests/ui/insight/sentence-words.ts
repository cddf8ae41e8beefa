import { createTranslator } from 'next-intl';
import type { Language } from '@/lib/database/generated/enums';
import { formatNumber } from '@/lib/ui/format/number-text';
import type { InsightWords } from '@/lib/ui/insight/insight-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';

const locales = { en: 'en-US', es: 'es-US' } as const;

/** Words of the questions for sentences that name sites and methods by their ids. */
export function sentenceWords(language: Language): InsightWords {
  const locale = locales[language];
  const given: Partial<Record<keyof InsightWords, unknown>> = {
    t: createTranslator({ locale, messages: loadMessages(language), namespace: 'insight' }),
    names: { siteName: (id: string) => id },
    inSentence: (method: string) => method,
    units: language === 'en' ? 'bags' : 'bolsas',
    ...{ language: locale, locale },
    number: (value: number, digits = 0) => formatNumber(value, locale, digits),
  };
  return given as InsightWords;
}
