import type { Messages } from '../messages/en';
import { quickWordsOf } from '../quick/quick-words';

/** The words about what a phone keeps, in one language: plain data, places still open. */
export function keepWordsOf(messages: Messages, locale: string) {
  return { ...messages.offline, locale };
}

export type KeepWords = ReturnType<typeof keepWordsOf>;

/** The same with the words of the quick entries, for the pages on which an entry can be written or changed. */
export function offlineWordsOf(messages: Messages, locale: string) {
  return { keep: keepWordsOf(messages, locale), quick: quickWordsOf(messages, locale) };
}

export type OfflineWords = ReturnType<typeof offlineWordsOf>;

/** "1 entry", "3 entries": the two forms that English and Spanish have. */
export function counted(forms: { readonly one: string; readonly other: string }, count: number): string {
  return (count === 1 ? forms.one : forms.other).replace('{count}', String(count));
}
