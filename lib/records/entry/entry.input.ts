import { z } from 'zod';

/** What `/api/entries` can write down. */
export const entryKinds = ['weighing', 'finding', 'check', 'look', 'loss', 'reading', 'undo'] as const;
export type EntryKind = (typeof entryKinds)[number];

const uuid = z.uuid('not-an-option').transform((id) => id.toLowerCase());

/** An entry made on a phone, as it was kept there and as it arrives. */
export const entryInput = z.strictObject({
  /** Made on the phone; also the id of the record that the entry makes. */
  id: uuid,
  /** Made anew each time what is sent changes. */
  key: uuid,
  kind: z.enum(entryKinds, 'not-an-option'),
  personId: uuid,
  networkId: uuid,
  madeAt: z.iso.datetime('not-a-date').transform((at) => new Date(at)),
  /** What the command of the kind takes; a correction when it names a `revision`. */
  input: z.record(z.string(), z.unknown(), 'missing'),
  confirmed: z.array(z.string().max(100, 'too-long'), 'missing').max(50, 'too-many-rows'),
});

export const takeEntryInput = entryInput.extend({
  /** SHA-256 of everything but the key, 64 hexadecimal digits. */
  requestHash: z.string().regex(/^[0-9a-f]{64}$/),
});

export type EntryRequest = z.output<typeof takeEntryInput>;
