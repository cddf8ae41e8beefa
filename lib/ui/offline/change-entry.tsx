'use client';

import { newId } from '@/lib/base/new-id';
import type { Outbox } from '@/lib/offline/keep-sending';
import type { KeptEntry } from '@/lib/offline/outbox-store';
import type { QuickOutbox } from '@/lib/offline/quick-outbox';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { QuickCheck } from '../quick/quick-check';
import { QuickContamination } from '../quick/quick-contamination';
import { QuickHarvest } from '../quick/quick-harvest';
import type { QuickProps } from '../quick/quick-props';
import { batchIdOf } from './describe-entry';
import { formValuesOf } from './form-values';
import type { OfflineWords } from './offline-words';

const forms = { weighing: QuickHarvest, finding: QuickContamination, check: QuickCheck, look: QuickCheck };

/** Whether entries of this kind have a form on the phone. */
export function canChange({ entry }: KeptEntry): boolean {
  return entry.kind in forms;
}

type Props = {
  readonly kept: KeptEntry;
  readonly outbox: Outbox;
  readonly snapshot: ShedSnapshot;
  readonly words: OfflineWords;
};

/** The form of an entry that was refused, filled with what was written; saving sends it anew under its own id. */
export function ChangeEntry({ kept, outbox, snapshot, words }: Props) {
  const { entry } = kept;
  const Form = Object.entries(forms).find(([kind]) => kind === entry.kind)?.[1];
  if (!Form) return null;
  const replacing: QuickOutbox = {
    ...outbox.quick,
    async save({ id, kind, input, confirmed }) {
      if (id !== entry.id) return outbox.quick.save({ id, kind, input, confirmed });
      const anew = { ...entry, key: newId(), kind, input, confirmed };
      if (!(await outbox.store.replace(id, entry.key, anew))) return { kind: 'needs-you' };
      void outbox.sendNow();
      return { kind: 'kept' };
    },
  };
  const props: QuickProps = {
    snapshot,
    words: words.quick,
    now: new Date().toISOString(),
    firstId: entry.id,
    batchId: batchIdOf(entry),
    outbox: replacing,
    values: formValuesOf(entry),
  };
  return <Form {...props} />;
}
