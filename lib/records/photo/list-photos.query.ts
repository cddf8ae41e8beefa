import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A picture as a page shows it; the bytes come by its own address. */
export type PhotoView = {
  readonly id: string;
  readonly findingId: string | null;
  readonly caption: string | null;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly takenAt: string;
  readonly own: boolean;
};

/** The pictures of a batch and of its findings, latest first. */
export async function listPhotos({ db, actor }: ReadContext, batchId: string): Promise<PhotoView[]> {
  const rows = await db.photo.findMany({
    where: { batchId, voidedAt: null, OR: [{ findingId: null }, { finding: { voidedAt: null } }] },
    orderBy: { id: 'desc' },
  });
  return rows.map(({ id, findingId, caption, widthPx, heightPx, createdAt, createdById }) => ({
    ...{ id, findingId, caption, widthPx, heightPx },
    takenAt: createdAt.toISOString(),
    own: createdById === actor.personId,
  }));
}
