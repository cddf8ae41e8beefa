import type { Entry } from './entry';

/** What a quick form hands over to be kept; whoever keeps it adds person, network, key and clock. */
export type EntryDraft = Pick<Entry, 'id' | 'kind' | 'input' | 'confirmed'>;

/** Where an entry stands, as the form that made it tells. */
export type SavedState =
  /** On this phone, waiting for the signal or just being sent. */
  | { readonly kind: 'kept' }
  | { readonly kind: 'sent' }
  /** Kept too, but the server refused it, asks about it or wants a sign-in: the list of unsent entries says which. */
  | { readonly kind: 'needs-you' }
  /** Taken back before it was sent, or voided by an `undo` entry after. */
  | { readonly kind: 'undone' };

/** The outbox as a quick form sees it. */
export type QuickOutbox = {
  /** Keeps the entry; answers as soon as it is on the phone. The same id again changes nothing. */
  save(draft: EntryDraft): Promise<SavedState>;
  /** Takes the entry back: out of the outbox while unsent, else by an `undo` entry. */
  undo(entryId: string): Promise<SavedState>;
  /** Tells each change from now on, until the answer is called. */
  watch(entryId: string, tell: (state: SavedState) => void): () => void;
};

/** How long an entry can be taken back from its form, milliseconds. */
export const undoMilliseconds = 15 * 60 * 1000;
