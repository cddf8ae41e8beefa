import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { type addPhotoInput, mostPhotosPerBatch } from './photo.input';
import type { PreparedPhoto } from './prepare-photo';

type Input = z.output<typeof addPhotoInput> & {
  readonly photo: PreparedPhoto;
  /** Its bytes are in the store outside already: only what it is about is kept here. */
  readonly outside: boolean;
};

/** Keeps a picture of a batch or of a finding; the same id again keeps it once. */
export async function addPhoto(
  { db, actor, origin }: WriteContext,
  { photo, outside, ...input }: Input,
): Promise<Result<{ id: string; batchId: string }>> {
  const id = input.id ?? newId();
  const repeat = await db.photo.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: repeat.batchId });
  const batch = await db.batch.findFirst({ where: { id: input.batchId, voidedAt: null } });
  if (!batch) return notFound;
  if (input.findingId) {
    const finding = await db.finding.findFirst({
      where: { id: input.findingId, batchId: batch.id, voidedAt: null },
    });
    if (!finding) return notFound;
  }
  const standing = await db.photo.count({ where: { batchId: batch.id, voidedAt: null } });
  if (standing >= mostPhotosPerBatch) return invalid('file', 'too-many-photos', { max: mostPhotosPerBatch });
  const of = { networkId: actor.networkId, id, siteId: batch.siteId };
  await db.photo.create({
    data: {
      ...of,
      batchId: batch.id,
      findingId: input.findingId ?? null,
      caption: input.caption,
      widthPx: photo.widthPx,
      heightPx: photo.heightPx,
      storedBytes: photo.image.byteLength,
      outside,
      origin,
      createdById: actor.personId,
    },
  });
  if (!outside)
    await db.photoContent.create({ data: { ...of, image: photo.image, thumbnail: photo.thumbnail } });
  return ok({ id, batchId: batch.id });
}
