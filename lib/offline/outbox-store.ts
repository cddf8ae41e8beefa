import type { Entry, EntryAnswer } from './entry';

/** Why an entry was not taken at its last try. */
export type Trouble = {
  /** Status of the answer; null: no answer at all, or one that is not the server's. */
  readonly status: number | null;
  /** What the server said, where it said anything. */
  readonly answer: Exclude<EntryAnswer, { kind: 'saved' }> | null;
};

/** An entry in the outbox and where it stands. */
export type KeptEntry = {
  readonly entry: Entry;
  readonly state: 'waiting' | 'sending' | 'sent' | 'needs-you';
  /**
   * Tries begun, whatever became of them. From the first on the server may hold the entry even when no answer came:
   * taking it back then needs an `undo` entry, not `remove`.
   */
  readonly tries: number;
  /** Not tried again before, milliseconds since 1970. */
  readonly notBefore: number;
  readonly trouble: Trouble | null;
  readonly saved: Extract<EntryAnswer, { kind: 'saved' }> | null;
  /** When the server's receipt came, by the phone's clock, milliseconds since 1970. */
  readonly sentAt: number | null;
};

export type Standing = Omit<KeptEntry, 'entry'>;

/** Standing of an entry that nobody has tried to send. */
export const untried: Standing = {
  state: 'waiting',
  tries: 0,
  notBefore: 0,
  trouble: null,
  saved: null,
  sentAt: null,
};

/**
 * The entries of one person on one phone. Every promise resolves once the change would survive the phone's being
 * switched off. Changes name the key that the caller last saw and do nothing when the entry has another one by now,
 * so that an answer to an earlier wording never marks a later one as sent.
 */
export type OutboxStore = {
  /** All entries, oldest first. */
  list(): Promise<readonly KeptEntry[]>;
  /** Keeps a new entry as `untried`; an id that is kept already changes nothing. */
  add(entry: Entry): Promise<void>;
  /** Changes where an entry stands; false when it has another key or is gone. */
  change(id: string, key: string, standing: Partial<Standing>): Promise<boolean>;
  /**
   * Replaces what is to be sent (under a new key) and sets it to wait with no trouble, its tries kept; false when it
   * has another key, is gone, or is being sent or has been.
   */
  replace(id: string, key: string, entry: Entry): Promise<boolean>;
  /** Only at the person's own word, or for an entry sent long ago; false when it has another key or is being sent. */
  remove(id: string, key: string): Promise<boolean>;
};
