import { getLocale, getMessages } from 'next-intl/server';
import { type FormWords, formWordsOf } from './form-words';

/** The words of every form, in the reader's language. */
export async function loadFormWords(): Promise<FormWords> {
  return formWordsOf((await getMessages()).common, await getLocale());
}

/** The words of a form that makes what is shown once: without an answer it may have been made and never seen. */
export async function loadFormWordsShownOnce(): Promise<FormWords> {
  const { common } = await getMessages();
  return { ...formWordsOf(common, await getLocale()), noSignal: common.noSignalShownOnce };
}
