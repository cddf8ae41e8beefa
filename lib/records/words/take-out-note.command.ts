import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { notedTable } from './noted-table';
import type { takeOutNoteInput } from './take-out-note.input';

/**
 * Empties the note of a record and changes nothing else, so that it can be done where nothing else may be changed any more:
 * a note may name somebody who asks to be forgotten. The history keeps what it said.
 */
export async function takeOutNote(
  { db }: WriteContext,
  { kind, id, revision }: z.output<typeof takeOutNoteInput>,
): Promise<Result<{ id: string }>> {
  const table = notedTable(db, kind);
  const noted = await table.find(id);
  if (!noted) return notFound;
  if (noted.note === null) return ok({ id });
  const { count } = await table.empty({ id, revision });
  if (count === 1) return ok({ id });
  const after = await table.find(id);
  return after === null || after.revision === revision
    ? notFound
    : { kind: 'conflict', current: after.revision };
}
