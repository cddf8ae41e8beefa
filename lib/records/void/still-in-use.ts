import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { laterLinks } from '../batch/moved-units';
import type { VoidableKind } from './void-record.input';

/**
 * How many live records hang on one that is to be voided. Voiding a lot under a batch, or a batch under a
 * harvest, would leave figures without a ground: the dependants are voided or corrected first.
 */
export async function stillInUse(db: ScopedDb, kind: VoidableKind, id: string): Promise<number> {
  const live = { voidedAt: null };
  switch (kind) {
    case 'batch': {
      const lines = await db.weighingLine.count({ where: { batchId: id, ...live, weighing: live } });
      return lines + (await laterLinks({ db }, id)).length;
    }
    case 'treatment-run':
      return db.batchComponent.count({ where: { treatmentRunId: id, ...live, batch: live } });
    case 'substrate-lot':
      return db.batchComponent.count({ where: { substrateLotId: id, ...live, batch: live } });
    case 'spawn-lot': {
      const shares = await db.spawnShare.count({ where: { spawnLotId: id, ...live, batch: live } });
      return shares + (await db.spawnLot.count({ where: { parentLotId: id, ...live } }));
    }
    case 'condition-place':
      return db.placement.count({ where: { placeId: id, ...live, batch: live } });
    case 'participant':
      return db.trainingAttendance.count({ where: { participantId: id, ...live, training: live } });
    case 'site':
      return db.batch.count({ where: { siteId: id, ...live } });
    default:
      return 0;
  }
}
