import type { OpenBatch, OpenRun } from '@/lib/growing/open-batch';

/** A line of the page of what is due, with the address of the one form it needs. */
export type ShedDue = {
  readonly text: string;
  readonly place: string;
  readonly when: string;
  readonly href: string;
  /** Instant or calendar date, by which the phone orders the lines. */
  readonly dueAt: string;
};

/** All that a phone keeps of a person's work: answered by `GET /api/shed`, stored under the person's id. */
export type ShedSnapshot = {
  readonly takenAt: string;
  readonly person: {
    readonly id: string;
    readonly name: string;
    readonly language: 'en' | 'es';
    readonly region: string;
    readonly massUnit: 'kg' | 'lb';
    readonly temperatureUnit: 'celsius' | 'fahrenheit';
  };
  readonly network: { readonly id: string; readonly name: string };
  readonly batches: readonly OpenBatch[];
  readonly runs: readonly OpenRun[];
  readonly due: readonly ShedDue[];
};
