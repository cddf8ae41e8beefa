import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { inParts } from './in-parts';
import { componentLinks, descentLinks, lineLink, shareLink, sourceLinks } from './link-rows';
import type { TracedKind, TraceLink } from './trace-link';

const voiding = { select: { voidedAt: true, voidReason: true } } as const;

/** The links that lead to things of one kind, voided ones too, of those the actor may see. */
export async function linksBack(
  db: ScopedDb,
  kind: TracedKind,
  ids: readonly string[],
): Promise<TraceLink[]> {
  switch (kind) {
    case 'weighing': {
      const lines = await inParts(ids, (part) =>
        db.weighingLine.findMany({
          where: { weighingId: { in: part } },
          include: { weighing: voiding, batch: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      return lines.map(lineLink);
    }
    case 'batch': {
      const shares = await inParts(ids, (part) =>
        db.spawnShare.findMany({
          where: { batchId: { in: part } },
          include: { batch: voiding, lot: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      const components = await inParts(ids, (part) =>
        db.batchComponent.findMany({
          where: { batchId: { in: part } },
          include: { batch: voiding, lot: voiding, run: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      const lives = await inParts(ids, (part) =>
        db.secondLifeSource.findMany({ where: { batchId: { in: part } }, orderBy: { id: 'asc' } }),
      );
      return [
        ...(await sourceLinks(db, lives)),
        ...shares.map(shareLink),
        ...componentLinks('substrate-lot', components),
        ...componentLinks('treatment', components),
      ];
    }
    case 'spawn-lot': {
      const lots = await inParts(ids, (part) =>
        db.spawnLot.findMany({
          where: { id: { in: part }, parentLotId: { not: null } },
          include: { parent: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      return descentLinks(lots);
    }
    case 'substrate-lot':
    case 'treatment':
      return [];
  }
}
