import { entriesFile } from '@/lib/offline/entries-file';
import type { KeptEntry } from '@/lib/offline/outbox-store';

/** Hands the unsent entries to the browser as a file to keep. */
export function saveEntriesFile(entries: readonly KeptEntry[]): void {
  const { name, text } = entriesFile(entries, new Date());
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
