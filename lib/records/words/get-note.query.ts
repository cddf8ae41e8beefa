import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { notedTable } from './noted-table';
import type { NotedKind } from './take-out-note.input';

/** The note of a record that has one; undefined when there is none, or the record is not there or not yours. */
export async function getNote(
  { db }: ReadContext,
  kind: NotedKind,
  id: string,
): Promise<{ code: string; revision: number; note: string; voided: boolean } | undefined> {
  const noted = await notedTable(db, kind).find(id);
  if (noted === null || noted.note === null) return undefined;
  const { code, revision, note, voidedAt } = noted;
  return { code, revision, note, voided: voidedAt !== null };
}
