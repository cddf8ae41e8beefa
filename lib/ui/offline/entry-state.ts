import type { KeptEntry } from '@/lib/offline/outbox-store';
import type { KeepWords } from './offline-words';

/** Where an entry stands, in words. */
export function entryStateText(kept: KeptEntry, words: KeepWords['state']): string {
  const { state, trouble } = kept;
  if (state === 'sent') return words.sent;
  if (state === 'sending') return words.sending;
  if (trouble?.status === 401) return words.signIn;
  if (trouble?.status === 403) return words.otherAccount;
  if (state === 'waiting')
    return trouble?.status === 429 || (trouble?.status ?? 0) >= 500 ? words.busy : words.waiting;
  if (trouble?.answer?.kind === 'asked') return words.asked;
  if (trouble?.answer?.kind === 'conflict') return words.conflict;
  return trouble?.status === 413 ? words.tooBig : words.refused;
}
