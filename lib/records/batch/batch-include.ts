import type { Prisma } from '@/lib/database/generated/client';

const byId = { id: 'asc' } as const;

/** All that a batch's page tells, voided entries included: they are shown struck through. */
export const batchInclude = {
  site: true,
  species: true,
  method: true,
  material: true,
  components: {
    where: { voidedAt: null },
    include: { lot: { include: { material: true } }, method: true, run: true },
    orderBy: byId,
  },
  spawnShares: { where: { voidedAt: null }, include: { lot: true }, orderBy: byId },
  layers: { where: { voidedAt: null }, orderBy: [{ position: 'asc' }, { id: 'asc' }] },
  looks: { orderBy: byId },
  findings: {
    include: {
      followUps: { orderBy: [{ doneOn: 'asc' }, { id: 'asc' }] },
      namedUnits: { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } },
    },
    orderBy: byId,
  },
  losses: {
    include: { namedUnits: { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } } },
    orderBy: byId,
  },
  checks: { orderBy: byId },
  weighingLines: { where: { voidedAt: null }, include: { weighing: true }, orderBy: byId },
} satisfies Prisma.BatchInclude;

export type BatchRow = Prisma.BatchGetPayload<{ include: typeof batchInclude }>;
