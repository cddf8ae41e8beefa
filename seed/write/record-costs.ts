import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { noteCostInput, noteLotPriceInput } from '@/lib/records/cost/cost.input';
import { noteCost } from '@/lib/records/cost/note-cost.command';
import { noteLotPrice } from '@/lib/records/cost/note-lot-price.command';
import { asDate } from '@/lib/records/fields/stored-date';
import { changeMoney } from '@/lib/records/settings/change-money.command';
import { changeMoneyInput } from '@/lib/records/settings/money.input';
import { inOneGo } from './in-one-go';

/** Sites that write costs down; at the last of them one part is always forgotten. */
const costingSites = ['ASHW', 'BRIAR', 'ELDER', 'GORSE', 'KESTR'];
const forgetful = 'KESTR';
const mostBatches = 50;

/** What was paid for a kilogram of a lot, cents; straw is cheap, spawn is not. */
const centsPerKg = { substrate: 8, spawn: 950 };

/** Closed batches of the last year at the sites that write costs down, with the runs that treated them. */
function readCosted(coordinator: Actor, today: string) {
  return readAs(coordinator, async ({ db }) => ({
    batches: await db.batch.findMany({
      where: {
        voidedAt: null,
        closedOn: { not: null },
        inoculatedOn: { gte: asDate(addDays(today, -365)) },
        site: { code: { in: costingSites } },
      },
      select: {
        ...{ id: true, unitCount: true, site: { select: { code: true } } },
        spawnShares: { where: { voidedAt: null }, select: { spawnLotId: true } },
        components: {
          where: { voidedAt: null },
          select: { treatmentRunId: true, substrateLotId: true, method: { select: { kind: true } } },
        },
      },
      orderBy: [{ inoculatedOn: 'desc' }, { code: 'asc' }],
      take: mostBatches,
    }),
    revision: (await db.network.findFirstOrThrow({ where: { id: coordinator.networkId } })).revision,
  }));
}

/** Records what an hour counts for, what lots cost, and what some batches and their treatments cost. */
export async function recordCosts(coordinator: Actor, today: string): Promise<void> {
  const { batches, revision } = await readCosted(coordinator, today);
  const runs = new Map(
    batches.flatMap(({ components }) =>
      components.flatMap(({ treatmentRunId, method }) =>
        treatmentRunId === null ? [] : [[treatmentRunId, method.kind] as const],
      ),
    ),
  );
  const substrateLots = new Set(
    batches.flatMap(({ components }) => components.map(({ substrateLotId }) => substrateLotId)),
  );
  const spawnLots = new Set(
    batches.flatMap(({ spawnShares }) => spawnShares.map(({ spawnLotId }) => spawnLotId)),
  );
  await inOneGo(coordinator, async (take) => {
    await take(changeMoneyInput, changeMoney, {
      ...{ revision, reason: 'agreed at the meeting', currency: 'USD', labourPerHour: '15' },
    });
    for (const id of substrateLots)
      await take(noteLotPriceInput, noteLotPrice, {
        ...{ of: 'substrate-lot', about: id, paid: centsPerKg.substrate / 10, mass: 10_000 },
      });
    for (const id of spawnLots)
      await take(noteLotPriceInput, noteLotPrice, {
        ...{ of: 'spawn-lot', about: id, paid: centsPerKg.spawn / 100, mass: 1_000 },
      });
    for (const [about, kind] of runs)
      await take(noteCostInput, noteCost, {
        ...{ of: 'treatment-run', about, water: '0.4' },
        ...(kind === 'cold_lime_soak' || kind === 'cold_ferment'
          ? { labourMinutes: 45, supplies: kind === 'cold_lime_soak' ? '1.8' : '0', fuel: '0' }
          : { labourMinutes: 75, supplies: '0', fuel: '5.5' }),
      });
    for (const { id, unitCount, site } of batches)
      await take(noteCostInput, noteCost, {
        ...{ of: 'batch', about: id, supplies: (unitCount * 12) / 100, fuel: '0', water: '0.1' },
        labourMinutes: site.code === forgetful ? '' : 30 + unitCount * 4,
      });
  });
}
