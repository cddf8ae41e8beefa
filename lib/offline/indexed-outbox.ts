import type { Entry } from './entry';
import { type KeptEntry, type OutboxStore, type Standing, untried } from './outbox-store';
import { type ShedDatabase, type StoredEntry, shedDatabase } from './shed-database';

const asKept = ({ entry, standing }: StoredEntry): KeptEntry => ({ entry, ...standing });

/**
 * The outbox in IndexedDB. Each change is one transaction of `strict` durability, so that it survives the phone's being
 * switched off, and two tabs cannot undo each other's work. `told` is called after each change with the entry's id.
 */
export function indexedOutbox(
  told: (entryId: string) => void = () => {},
  database: () => Promise<ShedDatabase> = shedDatabase,
): OutboxStore {
  const write = async (
    id: string,
    how: (found: StoredEntry | undefined) => StoredEntry | 'remove' | undefined,
  ): Promise<boolean> => {
    const transaction = (await database()).transaction(['entries', 'pictures'], 'readwrite', {
      durability: 'strict',
    });
    const entries = transaction.objectStore('entries');
    const wanted = how(await entries.get(id));
    if (wanted === 'remove') {
      await entries.delete(id);
      await transaction.objectStore('pictures').delete(id);
    } else if (wanted !== undefined) await entries.put(wanted);
    await transaction.done;
    if (wanted !== undefined) told(id);
    return wanted !== undefined;
  };

  return {
    // A store answers in the order of its keys.
    list: async () => (await (await database()).getAll('entries')).map(asKept),
    add: async (entry: Entry) => {
      await write(entry.id, (found) =>
        found === undefined
          ? { id: entry.id, personId: entry.personId, entry, standing: untried }
          : undefined,
      );
    },
    change: (id: string, key: string, standing: Partial<Standing>) =>
      write(id, (found) =>
        found?.entry.key === key ? { ...found, standing: { ...found.standing, ...standing } } : undefined,
      ),
    replace: (id: string, key: string, entry: Entry) =>
      write(id, (found) => {
        if (found?.entry.key !== key || ['sending', 'sent'].includes(found.standing.state)) return undefined;
        return { ...found, entry, standing: { ...untried, tries: found.standing.tries } };
      }),
    remove: (id: string, key: string) =>
      write(id, (found) =>
        found?.entry.key === key && found.standing.state !== 'sending' ? 'remove' : undefined,
      ),
  };
}
