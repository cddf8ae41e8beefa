import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { KnownMoisture } from '@/lib/growing/batch-dry-mass';
import { suitabilityTable } from '@/lib/growing/suitability-table';
import { spawnLeft } from '../spawn-lot/spawn-left';
import type { StartChoices } from './list-start-choices.query';
import { lotMoisture } from './lot-moisture';

/** What the records say about the choices that a batch form offers, for the sums and warnings beside its fields. */
export async function listStartFacts(context: ReadContext, choices: StartChoices) {
  const { db } = context;
  const live = { voidedAt: null };
  const lots = await db.substrateLot.findMany({
    where: { id: { in: choices.substrateLots.map(({ id }) => id) }, ...live },
    include: { material: true },
  });
  const runs = await db.treatmentRun.findMany({
    where: { id: { in: choices.runs.map(({ id }) => id) }, ...live },
    select: { id: true, methodId: true },
  });
  const drained = await db.materialMoisture.findMany({ where: live });
  const said = await db.suitability.findMany({ where: { ...live, verdict: { not: 'suits' } } });
  const tableOf = (speciesId: string | null) =>
    suitabilityTable(said.filter((row) => row.speciesId === speciesId));
  return {
    lots: lots.map((lot) => ({
      id: lot.id,
      materialId: lot.materialId,
      materialKind: lot.material.kind,
      received: lotMoisture(lot) satisfies KnownMoisture,
    })),
    methods: choices.methods.map(({ id, kind }) => ({ id, kind })),
    runs,
    drained: drained.map((row) => ({
      materialId: row.materialId,
      methodId: row.methodId,
      percent: row.drainedMoisturePercent.toNumber(),
    })),
    spawnLots: choices.spawnLots.map(({ id, code }) => ({ id, code })),
    spawnLeft: await spawnLeft(
      context,
      choices.spawnLots.map(({ id }) => id),
      choices.many ? choices.sites.map(({ id }) => id) : undefined,
    ),
    suitability: Object.fromEntries(
      choices.species.map(({ id }) => {
        const { materials, methods } = tableOf(id);
        return [id, { materials, methods }] as const;
      }),
    ),
    pairs: tableOf(null).pairs,
  };
}
