import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A photo that a story may show. */
export type PhotoToChoose = {
  readonly id: string;
  readonly batchCode: string;
  readonly caption: string | null;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly takenAt: string;
};

/** The latest photos of the sites in the network, for a coordinator to choose from. */
export async function listPhotosToChoose({ db, actor }: ReadContext): Promise<PhotoToChoose[]> {
  if (actor.role !== 'coordinator') return [];
  const rows = await db.photo.findMany({
    where: { voidedAt: null, batch: { voidedAt: null, site: { leftAt: null } } },
    orderBy: { id: 'desc' },
    take: 24,
    select: {
      id: true,
      caption: true,
      widthPx: true,
      heightPx: true,
      createdAt: true,
      batch: { select: { code: true } },
    },
  });
  return rows.map(({ id, caption, widthPx, heightPx, createdAt, batch }) => ({
    ...{ id, caption, widthPx, heightPx },
    batchCode: batch.code,
    takenAt: createdAt.toISOString(),
  }));
}
