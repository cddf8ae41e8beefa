/** What can be written down with no signal. `undo` voids an entry that was sent; `photo` carries a picture beside it. */
export const entryKinds = [
  'weighing',
  'finding',
  'check',
  'look',
  'loss',
  'reading',
  'photo',
  'undo',
] as const;
export type EntryKind = (typeof entryKinds)[number];

/** One thing written down on a phone, as kept there and as posted to `/api/entries`. */
export type Entry = {
  /** UUID v7 made on the phone; also the id of the record that the entry makes. */
  readonly id: string;
  /** UUID made anew each time what is to be sent changes; goes out as the Idempotency-Key. */
  readonly key: string;
  readonly kind: EntryKind;
  /** Whose entry it is: it is never sent under another account or into another network. */
  readonly personId: string;
  readonly networkId: string;
  /** The phone's clock when it was saved, as a UTC instant. */
  readonly madeAt: string;
  /** What the command takes, as JSON: typed text stays text with its unit, ids and dates as strings. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Codes of the questions that the person has answered with yes. */
  readonly confirmed: readonly string[];
};

/** What the server answers to an entry. Every answer but `saved` leaves the entry on the phone. */
export type EntryAnswer =
  | { readonly kind: 'saved'; readonly recordId: string; readonly revision: number; readonly savedAt: string }
  /** Refused: sentences in the reader's language, each with the field it is about. 400, 404, 413, 422. */
  | {
      readonly kind: 'refused';
      readonly errors: readonly { readonly field: string; readonly text: string }[];
    }
  /** Implausible: saved once the person answers yes to each. 409. */
  | {
      readonly kind: 'asked';
      readonly questions: readonly { readonly code: string; readonly text: string }[];
    }
  /** Somebody else changed the record first; both versions, to choose from. 412. */
  | {
      readonly kind: 'conflict';
      readonly revision: number;
      readonly changedBy: string | null;
      readonly changedAt: string;
      readonly fields: readonly { readonly label: string; readonly theirs: string; readonly yours: string }[];
    };
