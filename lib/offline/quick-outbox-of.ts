import { newId } from '@/lib/base/new-id';
import type { Entry } from './entry';
import type { outboxNews } from './outbox-news';
import type { KeptEntry, OutboxStore } from './outbox-store';
import type { QuickOutbox, SavedState } from './quick-outbox';

type Parts = {
  readonly store: OutboxStore;
  readonly news: ReturnType<typeof outboxNews>;
  readonly personId: string;
  readonly networkId: string;
  readonly now: () => Date;
  /** Begins to send, without waiting for it. */
  readonly send: () => void;
};

function savedState(kept: KeptEntry | undefined): SavedState {
  if (kept === undefined) return { kind: 'undone' };
  if (kept.state === 'sent') return { kind: 'sent' };
  const waitsForPerson = kept.state === 'needs-you' || kept.trouble?.status === 401;
  return { kind: waitsForPerson ? 'needs-you' : 'kept' };
}

/** The outbox as a quick form sees it. */
export function quickOutboxOf({ store, news, personId, networkId, now, send }: Parts): QuickOutbox {
  const find = async (id: string) => (await store.list()).find(({ entry }) => entry.id === id);
  const anew = (part: Pick<Entry, 'id' | 'kind' | 'input' | 'confirmed'>): Entry => ({
    ...part,
    key: newId(),
    personId,
    networkId,
    madeAt: now().toISOString(),
  });
  return {
    async save(draft) {
      await store.add(anew(draft));
      send();
      return savedState(await find(draft.id));
    },
    async undo(entryId) {
      const kept = await find(entryId);
      if (kept === undefined) return { kind: 'undone' };
      // The server has never seen it, or said for certain that it is not saved: it can simply be taken out.
      const said = kept.state === 'needs-you' ? kept.trouble?.answer?.kind : undefined;
      const neverThere = kept.tries === 0 || said === 'refused' || said === 'asked';
      if (neverThere && (await store.remove(entryId, kept.entry.key))) return { kind: 'undone' };
      await store.add(anew({ id: newId(), kind: 'undo', input: { entryId }, confirmed: [] }));
      // An entry that waits for the person would hold its undo up for ever; an earlier wording may be at the server.
      if (kept.state === 'needs-you') await store.remove(entryId, kept.entry.key);
      send();
      return { kind: 'undone' };
    },
    watch(entryId, tell) {
      return news.listen((changed) => {
        if (changed !== entryId) return;
        void find(entryId).then((kept) => tell(savedState(kept)));
      });
    },
  };
}
