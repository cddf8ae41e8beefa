import type { Entry } from './entry';

/** Id of the entry that must be with the server before this one: what an `undo` takes back, a `photo` belongs to. */
export function parentEntry(entry: Entry): string | undefined {
  if (entry.kind !== 'undo' && entry.kind !== 'photo') return undefined;
  const parent = entry.kind === 'undo' ? entry.input.entryId : entry.input.parentId;
  return typeof parent === 'string' ? parent : undefined;
}
