import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import type { VoidableKind } from './void-record.input';

type Standing = { revision: number; voidedAt: Date | null } | null;
type Table = {
  find: (id: string) => Promise<Standing>;
  mark: (
    where: { id: string; revision: number; voidedAt: null },
    data: { voidedAt: Date; voidReason: string },
  ) => Promise<{ count: number }>;
};

/** How to find and mark a record of each kind that can be voided. */
export function voidableTable(db: ScopedDb, kind: VoidableKind): Table {
  const select = { revision: true, voidedAt: true } as const;
  switch (kind) {
    case 'batch':
      return {
        find: (id) => db.batch.findFirst({ where: { id }, select }),
        mark: (where, data) => db.batch.updateMany({ where, data }),
      };
    case 'weighing':
      return {
        find: (id) => db.weighing.findFirst({ where: { id }, select }),
        mark: (where, data) => db.weighing.updateMany({ where, data }),
      };
    case 'finding':
      return {
        find: (id) => db.finding.findFirst({ where: { id }, select }),
        mark: (where, data) => db.finding.updateMany({ where, data }),
      };
    case 'finding-follow-up':
      return {
        find: (id) => db.findingFollowUp.findFirst({ where: { id }, select }),
        mark: (where, data) => db.findingFollowUp.updateMany({ where, data }),
      };
    case 'look':
      return {
        find: (id) => db.look.findFirst({ where: { id }, select }),
        mark: (where, data) => db.look.updateMany({ where, data }),
      };
    case 'loss':
      return {
        find: (id) => db.loss.findFirst({ where: { id }, select }),
        mark: (where, data) => db.loss.updateMany({ where, data }),
      };
    case 'check':
      return {
        find: (id) => db.check.findFirst({ where: { id }, select }),
        mark: (where, data) => db.check.updateMany({ where, data }),
      };
    case 'treatment-run':
      return {
        find: (id) => db.treatmentRun.findFirst({ where: { id }, select }),
        mark: (where, data) => db.treatmentRun.updateMany({ where, data }),
      };
    case 'treatment-reading':
      return {
        find: (id) => db.treatmentReading.findFirst({ where: { id }, select }),
        mark: (where, data) => db.treatmentReading.updateMany({ where, data }),
      };
    case 'substrate-lot':
      return {
        find: (id) => db.substrateLot.findFirst({ where: { id }, select }),
        mark: (where, data) => db.substrateLot.updateMany({ where, data }),
      };
    case 'substrate-receipt':
      return {
        find: (id) => db.substrateReceipt.findFirst({ where: { id }, select }),
        mark: (where, data) => db.substrateReceipt.updateMany({ where, data }),
      };
    case 'spawn-lot':
      return {
        find: (id) => db.spawnLot.findFirst({ where: { id }, select }),
        mark: (where, data) => db.spawnLot.updateMany({ where, data }),
      };
    case 'spawn-receipt':
      return {
        find: (id) => db.spawnReceipt.findFirst({ where: { id }, select }),
        mark: (where, data) => db.spawnReceipt.updateMany({ where, data }),
      };
    case 'bed-layer':
      return {
        find: (id) => db.bedLayer.findFirst({ where: { id }, select }),
        mark: (where, data) => db.bedLayer.updateMany({ where, data }),
      };
    case 'photo':
      return {
        find: (id) => db.photo.findFirst({ where: { id }, select }),
        mark: (where, data) => db.photo.updateMany({ where, data }),
      };
    case 'label-sheet':
      return {
        find: (id) => db.labelSheet.findFirst({ where: { id }, select }),
        mark: (where, data) => db.labelSheet.updateMany({ where, data }),
      };
    case 'condition-place':
      return {
        find: (id) => db.conditionPlace.findFirst({ where: { id }, select }),
        mark: (where, data) => db.conditionPlace.updateMany({ where, data }),
      };
    case 'condition-import':
      return {
        find: (id) => db.conditionImport.findFirst({ where: { id }, select }),
        mark: async (where, data) => {
          const marked = await db.conditionImport.updateMany({ where, data });
          if (marked.count === 1)
            await db.conditionReading.updateMany({ where: { importId: where.id, voidedAt: null }, data });
          return marked;
        },
      };
    case 'condition-reading':
      // One of an import stands and falls with it.
      return {
        find: (id) => db.conditionReading.findFirst({ where: { id, importId: null }, select }),
        mark: (where, data) => db.conditionReading.updateMany({ where: { ...where, importId: null }, data }),
      };
    case 'placement':
      return {
        find: (id) => db.placement.findFirst({ where: { id }, select }),
        mark: (where, data) => db.placement.updateMany({ where, data }),
      };
    case 'participant':
      return {
        find: (id) => db.participant.findFirst({ where: { id }, select }),
        mark: (where, data) => db.participant.updateMany({ where, data }),
      };
    case 'training':
      return {
        find: (id) => db.training.findFirst({ where: { id }, select }),
        mark: (where, data) => db.training.updateMany({ where, data }),
      };
    case 'sale':
      return {
        find: (id) => db.sale.findFirst({ where: { id }, select }),
        mark: (where, data) => db.sale.updateMany({ where, data }),
      };
    case 'practice':
      return {
        find: (id) => db.adoptedPractice.findFirst({ where: { id }, select }),
        mark: (where, data) => db.adoptedPractice.updateMany({ where, data }),
      };
    case 'trial':
      // Once started a trial is ended, never taken out: what was planned and drawn stands.
      return {
        find: (id) => db.trial.findFirst({ where: { id, startedAt: null }, select }),
        mark: (where, data) => db.trial.updateMany({ where: { ...where, startedAt: null }, data }),
      };
    case 'site':
      return {
        find: (id) => db.site.findFirst({ where: { id }, select }),
        mark: (where, data) => db.site.updateMany({ where, data }),
      };
  }
}
