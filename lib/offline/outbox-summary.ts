import type { KeptEntry } from './outbox-store';

/** What a page says about the outbox at all times. */
export type OutboxSummary = {
  /** Entries of this person that are not with the server. */
  readonly unsent: number;
  /** Of these, the ones that wait for the person: refused, asked about, or changed by somebody else. */
  readonly needYou: number;
  /** Entries that other people made on this phone; sent once they sign in. */
  readonly others: number;
  /** The server knows no sign-in; entries wait for one. */
  readonly signIn: boolean;
};

export const emptySummary: OutboxSummary = { unsent: 0, needYou: 0, others: 0, signIn: false };

export function summaryOf(entries: readonly KeptEntry[], personId: string, signIn: boolean): OutboxSummary {
  const open = entries.filter(({ state }) => state !== 'sent');
  const own = open.filter(({ entry }) => entry.personId === personId);
  return {
    unsent: own.length,
    needYou: own.filter(({ state }) => state === 'needs-you').length,
    others: open.length - own.length,
    signIn: signIn && own.length > 0,
  };
}
