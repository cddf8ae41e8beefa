import { getLocale, getMessages } from 'next-intl/server';
import { type FormWords, formWordsOf } from './form-words';

/** The words of every form, in the reader's language. */
export async function loadFormWords(): Promise<FormWords> {
  return formWordsOf((await getMessages()).common, await getLocale());
}
