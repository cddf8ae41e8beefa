import { createTranslator } from 'use-intl/core';
import { loadMessages } from '../messages/load-messages';
import type { DynamicWords } from './dynamic-words';

/** The words of a language where no page is being drawn, such as in an answer to a program. */
export function wordsFor(language: 'en' | 'es', locale: string): DynamicWords {
  const words = createTranslator({ locale, messages: loadMessages(language), timeZone: 'UTC' });
  return words as unknown as DynamicWords;
}
