import { type KeptEntry, type OutboxStore, untried } from '@/lib/offline/outbox-store';

/** An outbox that survives its device: `open` gives a handle as a page has it, `kill` makes earlier handles powerless. */
export type MemoryOutbox = {
  readonly open: () => OutboxStore;
  readonly kill: () => void;
  readonly all: () => readonly KeptEntry[];
};

export function memoryOutbox(): MemoryOutbox {
  const kept = new Map<string, KeptEntry>();
  let life = 0;

  const open = (): OutboxStore => {
    const born = life;
    const change = async (work: () => boolean): Promise<boolean> => {
      // As in a browser, a write takes its turn; a page that was killed meanwhile writes nothing.
      await Promise.resolve();
      return born === life && work();
    };
    const put = (id: string, key: string, next: (old: KeptEntry) => KeptEntry | undefined) =>
      change(() => {
        const old = kept.get(id);
        const replaced = old !== undefined && old.entry.key === key ? next(old) : undefined;
        if (replaced === undefined) return false;
        kept.set(id, replaced);
        return true;
      });
    return {
      list: async () => [...kept.values()],
      add: async (entry) => {
        await change(() => {
          if (!kept.has(entry.id)) kept.set(entry.id, { entry, ...untried });
          return true;
        });
      },
      change: (id, key, standing) => put(id, key, (old) => ({ ...old, ...standing })),
      replace: (id, key, entry) =>
        put(id, key, (old) =>
          old.state === 'sending' || old.state === 'sent'
            ? undefined
            : { ...untried, entry, tries: old.tries },
        ),
      remove: (id, key) =>
        change(() => {
          const old = kept.get(id);
          return old !== undefined && old.entry.key === key && old.state !== 'sending' && kept.delete(id);
        }),
    };
  };
  return {
    open,
    kill: () => {
      life += 1;
    },
    all: () => [...kept.values()],
  };
}
