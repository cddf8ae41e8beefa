import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { notedTable } from './noted-table';
import type { NotedKind } from './take-out-note.input';

/** The note of a record that has one; undefined when there is none, or the record is not there or not yours. */
export async function getNote(
  { db }: ReadContext,
  kind: NotedKind,
  id: string,
): Promise<{ code: string; revision: number; note: string } | undefined> {
  const noted = await notedTable(db, kind).find(id);
  return noted === null || noted.note === null ? undefined : { ...noted, note: noted.note };
}
