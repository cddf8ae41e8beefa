import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { inParts } from './in-parts';
import { componentLinks, descentLinks, lineLink, shareLink, sourceLinks } from './link-rows';
import type { TracedKind, TraceLink } from './trace-link';

const voiding = { select: { voidedAt: true, voidReason: true } } as const;

/** The links that lead on from things of one kind, voided ones too, of those the actor may see. */
export async function linksOn(db: ScopedDb, kind: TracedKind, ids: readonly string[]): Promise<TraceLink[]> {
  switch (kind) {
    case 'spawn-lot': {
      const children = await inParts(ids, (part) =>
        db.spawnLot.findMany({
          where: { parentLotId: { in: part } },
          include: { parent: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      const shares = await inParts(ids, (part) =>
        db.spawnShare.findMany({
          where: { spawnLotId: { in: part } },
          include: { batch: voiding, lot: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      return [...descentLinks(children), ...shares.map(shareLink)];
    }
    case 'substrate-lot':
    case 'treatment': {
      const components = await inParts(ids, (part) =>
        db.batchComponent.findMany({
          where: kind === 'treatment' ? { treatmentRunId: { in: part } } : { substrateLotId: { in: part } },
          include: { batch: voiding, lot: voiding, run: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      return componentLinks(kind, components);
    }
    case 'batch': {
      const lives = await inParts(ids, (part) =>
        db.secondLifeSource.findMany({ where: { sourceBatchId: { in: part } }, orderBy: { id: 'asc' } }),
      );
      const lines = await inParts(ids, (part) =>
        db.weighingLine.findMany({
          where: { batchId: { in: part } },
          include: { weighing: voiding, batch: voiding },
          orderBy: { id: 'asc' },
        }),
      );
      return [...(await sourceLinks(db, lives)), ...lines.map(lineLink)];
    }
    case 'weighing':
      return [];
  }
}
