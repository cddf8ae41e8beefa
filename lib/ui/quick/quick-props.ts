import type { ReactNode } from 'react';
import type { QuickOutbox } from '@/lib/offline/quick-outbox';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import type { FormState } from '../form/field-spec';
import type { QuickWords } from './quick-words';

/** The part of a snapshot that a quick entry reads. */
export type QuickSnapshot = Pick<ShedSnapshot, 'person' | 'batches' | 'due'>;

/** What was kept, for what is offered after it. */
export type KeptEntry = {
  readonly id: string;
  readonly kind: 'weighing' | 'finding' | 'check' | 'look';
  readonly batchId: string;
};

/** The same props for the three quick entries, on a server's page and on the page without signal. */
export type QuickProps = {
  readonly snapshot: QuickSnapshot;
  readonly words: QuickWords;
  /** Instant at which the page was made; the phone's clock takes over once scripts run. */
  readonly now: string;
  /** Id of the first entry, so that a form posted twice without script is saved once. */
  readonly firstId: string;
  /** The batch that the address names; another than the open ones is said to be so. */
  readonly batchId?: string;
  /** Where entries are kept; without it the form posts to `action`. */
  readonly outbox?: QuickOutbox;
  readonly action?: (state: FormState, data: FormData) => Promise<FormState>;
  /** What the fields hold at first, for an entry that is changed before it is sent. */
  readonly values?: FormState['values'];
  /** Offered once an entry is kept, such as a photo of it. */
  readonly afterKept?: (kept: KeptEntry) => ReactNode;
};
