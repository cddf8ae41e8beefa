import { newId } from '@/lib/base/new-id';
import type { QuickOutbox, SavedState } from './quick-outbox';
import { shedDatabase } from './shed-database';
import { shrinkPhoto } from './shrink-photo';

export type PictureOf = { readonly batchId: string; readonly findingId?: string; readonly parentId?: string };

/**
 * Keeps a picture on the phone and sends it like any entry, after the entry that it belongs to. The picture is stored
 * before its entry, so that no entry waits for a picture that is not there.
 */
export async function keepPicture(outbox: QuickOutbox, file: Blob, of: PictureOf): Promise<SavedState> {
  const id = newId();
  const database = await shedDatabase();
  await database.put('pictures', { id, picture: await shrinkPhoto(file) });
  return outbox.save({ id, kind: 'photo', input: { ...of }, confirmed: [] });
}
