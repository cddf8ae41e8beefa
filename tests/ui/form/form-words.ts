import type { FormWords } from '@/lib/ui/form/form-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';

/** The words of a form in English, as the server would hand them over. */
export const formWords: FormWords = { ...loadMessages('en').common, locale: 'en-US' };
