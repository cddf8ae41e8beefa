import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Entry } from './entry';
import type { Standing } from './outbox-store';
import type { ShedSnapshot } from './shed-snapshot';

/** An entry as it lies on the phone. Its id begins with the time of making, so ids in order are entries in order. */
export type StoredEntry = {
  readonly id: string;
  readonly personId: string;
  readonly entry: Entry;
  readonly standing: Standing;
};

/** The last copy of a person's work, with the tag by which the server knows whether it has changed. */
export type StoredSnapshot = {
  readonly personId: string;
  readonly snapshot: ShedSnapshot;
  readonly tag: string | null;
  readonly keptAt: number;
};

export interface ShedSchema extends DBSchema {
  entries: { key: string; value: StoredEntry; indexes: { personId: string } };
  /** Pictures that wait with their entry, by the entry's id. */
  pictures: { key: string; value: { readonly id: string; readonly picture: Blob } };
  snapshots: { key: string; value: StoredSnapshot };
}

export type ShedDatabase = IDBPDatabase<ShedSchema>;

const name = 'pinset';
const version = 1;

let opened: Promise<ShedDatabase> | undefined;

/** The phone's database: entries not yet sent, and the last copy of the person's work. Opened once per page. */
export function shedDatabase(): Promise<ShedDatabase> {
  opened ??= openDB<ShedSchema>(name, version, {
    upgrade(database) {
      database.createObjectStore('entries', { keyPath: 'id' }).createIndex('personId', 'personId');
      database.createObjectStore('pictures', { keyPath: 'id' });
      database.createObjectStore('snapshots', { keyPath: 'personId' });
    },
    // Another page wants a newer version: this one lets go, and opens anew at its next use.
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
      opened = undefined;
    },
    terminated() {
      opened = undefined;
    },
  });
  return opened;
}
