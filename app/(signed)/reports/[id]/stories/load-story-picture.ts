import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getPhoto } from '@/lib/records/photo/get-photo.query';
import { outsideStore } from '@/lib/records/photo/photo-store';

/** The chosen photo's bytes; undefined when none was chosen or it is not there. */
export async function loadStoryPicture(
  actor: Actor,
  chosen: unknown,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (typeof chosen !== 'string' || !isId(chosen)) return undefined;
  const found = await readAs(actor, (context) => getPhoto(context, chosen, 'full'));
  return found?.kind === 'outside' ? await outsideStore()?.get(found.name) : found?.image;
}
