import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { storedName } from './photo-store';

/** Where the bytes of a picture are: here, or under a name in the store outside. */
export type PhotoBytes =
  | { readonly kind: 'here'; readonly image: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'outside'; readonly name: string };

/** The bytes of a picture, JPEG; undefined when it is not there, not yours, or voided. */
export async function getPhoto(
  { db, actor }: ReadContext,
  id: string,
  size: 'full' | 'small',
): Promise<PhotoBytes | undefined> {
  const photo = await db.photo.findFirst({ where: { id, voidedAt: null }, select: { outside: true } });
  if (!photo) return undefined;
  // Fetched by whoever asks: a store outside may be slow, and a transaction should not wait for it.
  if (photo.outside) return { kind: 'outside', name: storedName(actor.networkId, id, size) };
  const content = await db.photoContent.findFirst({
    where: { id },
    select: { image: size === 'full', thumbnail: size === 'small' },
  });
  const image = content?.image ?? content?.thumbnail;
  return image && { kind: 'here', image };
}
