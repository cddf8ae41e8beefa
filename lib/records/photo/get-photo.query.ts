import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { outsideStore, storedName } from './photo-store';

/** The bytes of a picture, JPEG; undefined when it is not there, not yours, or voided. */
export async function getPhoto(
  { db, actor }: ReadContext,
  id: string,
  size: 'full' | 'small',
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const photo = await db.photo.findFirst({ where: { id, voidedAt: null }, select: { outside: true } });
  if (!photo) return undefined;
  if (photo.outside) return outsideStore()?.get(storedName(actor.networkId, id, size));
  const content = await db.photoContent.findFirst({
    where: { id },
    select: { image: size === 'full', thumbnail: size === 'small' },
  });
  return content?.image ?? content?.thumbnail;
}
