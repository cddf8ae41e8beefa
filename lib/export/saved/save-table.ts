import 'server-only';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Actor } from '@/lib/access/actor';
import { readSnapshot } from '@/lib/access/scoped-db';
import type { SavedQuery } from './saved-table';
import { type SavedTableName, savedTables } from './saved-tables';
import { writeCsv } from './write-csv';
import { writeWorkbook } from './write-xlsx';
import type { WrittenWords } from './written-words';

export type SavedFormat = 'csv' | 'xlsx';

export type SavedRows =
  | { readonly kind: 'saved'; readonly file: string; readonly rows: number }
  | { readonly kind: 'too-long' };

/**
 * Writes all rows of a list into a file of its own folder, which the caller removes: exactly those that the list's
 * filter lets through and the actor may see, as they stood at one instant.
 */
export async function saveTable(
  actor: Actor,
  name: SavedTableName,
  query: SavedQuery,
  format: SavedFormat,
  words: WrittenWords,
): Promise<SavedRows> {
  const folder = await mkdtemp(path.join(tmpdir(), 'pinset-save-'));
  const file = path.join(folder, `rows.${format}`);
  const { columns, pages } = savedTables[name];
  const write = format === 'csv' ? writeCsv : writeWorkbook;
  try {
    const rows = await readSnapshot(actor, (context) => write(file, columns, pages(context, query), words));
    if (rows !== undefined) return { kind: 'saved', file, rows };
  } catch (error) {
    await rm(folder, { recursive: true, force: true });
    throw error;
  }
  await rm(folder, { recursive: true, force: true });
  return { kind: 'too-long' };
}
