import type { Language } from '@/lib/database/generated/enums';
import { en, type Messages } from './en';
import { es } from './es';

const catalogues: Readonly<Record<Language, Messages>> = { en, es };

/** All texts of a language. */
export function loadMessages(language: Language): Messages {
  return catalogues[language];
}
