import type { Entry } from './entry';
import { entryKinds } from './entry';
import type { KeptEntry } from './outbox-store';

const form = 'pinset-unsent-entries';

/** Unsent entries as a file that can be read back in; pictures are not in it. */
export function entriesFile(entries: readonly KeptEntry[], at: Date): { name: string; text: string } {
  const unsent = entries.filter(({ state, entry }) => state !== 'sent' && entry.kind !== 'photo');
  const content = { form, savedAt: at.toISOString(), entries: unsent.map(({ entry }) => entry) };
  return {
    name: `pinset-${unsent.length}-unsent-${at.toISOString().slice(0, 16).replace(':', '')}.json`,
    text: `${JSON.stringify(content, null, 2)}\n`,
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isEntry = (value: unknown): value is Entry =>
  isObject(value) &&
  ['id', 'key', 'personId', 'networkId', 'madeAt'].every((name) => typeof value[name] === 'string') &&
  entryKinds.some((kind) => kind === value.kind) &&
  isObject(value.input) &&
  Array.isArray(value.confirmed);

/** Entries of a file made by `entriesFile`, of this person only; undefined when it is no such file. */
export function readEntriesFile(text: string, personId: string): readonly Entry[] | undefined {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isObject(content) || content.form !== form || !Array.isArray(content.entries)) return undefined;
  return content.entries.filter(isEntry).filter((entry) => entry.personId === personId);
}
