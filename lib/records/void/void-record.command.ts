import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { stillInUse } from './still-in-use';
import type { VoidableKind, voidRecordInput } from './void-record.input';

type Standing = { revision: number; voidedAt: Date | null } | null;
type Table = {
  find: (id: string) => Promise<Standing>;
  mark: (
    where: { id: string; revision: number; voidedAt: null },
    data: { voidedAt: Date; voidReason: string },
  ) => Promise<{ count: number }>;
};

function tableOf(db: ScopedDb, kind: VoidableKind): Table {
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
    case 'site':
      return {
        find: (id) => db.site.findFirst({ where: { id }, select }),
        mark: (where, data) => db.site.updateMany({ where, data }),
      };
  }
}

/** Takes a record out of every figure and list, with a reason; it stays readable in the history. */
export async function voidRecord(
  { db, now }: WriteContext,
  input: z.output<typeof voidRecordInput>,
): Promise<Result<{ id: string }>> {
  const table = tableOf(db, input.kind);
  const standing = await table.find(input.id);
  if (!standing) return notFound;
  if (standing.voidedAt !== null) return ok({ id: input.id });
  const dependants = await stillInUse(db, input.kind, input.id);
  if (dependants > 0) return invalid('', 'still-in-use', { count: dependants });
  const { count } = await table.mark(
    { id: input.id, revision: input.revision, voidedAt: null },
    { voidedAt: now, voidReason: input.reason },
  );
  if (count === 1) return ok({ id: input.id });
  const after = await table.find(input.id);
  return after === null || after.revision === input.revision
    ? notFound
    : { kind: 'conflict', current: after.revision };
}
