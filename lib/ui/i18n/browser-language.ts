import type { ReaderLanguage } from '@/lib/base/reader-locale';

/** Language and region by a browser's wish, for somebody who has not signed in. */
export function browserLanguage(acceptLanguage: string): ReaderLanguage {
  return /^es\b/i.test(acceptLanguage.trim())
    ? { language: 'es', region: 'es-US' }
    : { language: 'en', region: 'en-US' };
}
