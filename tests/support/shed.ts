import type { Actor } from '@/lib/access/actor';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import { asDate } from '@/lib/records/fields/stored-date';
import type { Growers } from './growers';

export type Shed = {
  readonly oyster: string;
  readonly shiitake: string;
  readonly wineCap: string;
  readonly hotWater: string;
  readonly lime: string;
  readonly steam: string;
  readonly untreated: string;
  /** Wheat straw, measured 12 % as received. */
  readonly straw: string;
  /** Wheat bran without a moisture of its own: 12 % is assumed from the material. */
  readonly bran: string;
  readonly logs: string;
  readonly oysterSpawn: string;
  readonly secondOysterSpawn: string;
  readonly shiitakeSpawn: string;
  /** A hot-water bath at Mill Lane on 2026-03-30. */
  readonly bathRun: string;
};

async function insertShed(coordinator: Actor, siteId: string): Promise<Shed> {
  const result = await writeAs(coordinator, {}, async ({ db, actor }) => {
    const { networkId } = actor;
    const species = async (code: string) => (await db.species.findFirstOrThrow({ where: { code } })).id;
    const method = async (code: string) => (await db.method.findFirstOrThrow({ where: { code } })).id;
    const lot = async (code: string, material: string, moisturePercent: number | null) => {
      const id = newId();
      const { id: materialId } = await db.material.findFirstOrThrow({ where: { code: material } });
      const moistureSource = moisturePercent === null ? 'none' : 'measured';
      const receivedOn = asDate('2026-03-01');
      await db.substrateLot.create({
        data: { networkId, id, code, materialId, receivedOn, moisturePercent, moistureSource },
      });
      return id;
    };
    const spawn = async (code: string, speciesId: string) => {
      const id = newId();
      const madeOn = asDate('2026-03-01');
      await db.spawnLot.create({ data: { networkId, id, code, speciesId, form: 'grain', madeOn } });
      return id;
    };
    const oyster = await species('pleurotus_ostreatus');
    const shiitake = await species('lentinula_edodes');
    const hotWater = await method('hot_water_bath');
    const bathRun = newId();
    const startedAt = new Date('2026-03-30T14:00:00Z');
    await db.treatmentRun.create({
      data: { networkId, id: bathRun, code: 'BATH-1', siteId, methodId: hotWater, startedAt },
    });
    return ok({
      oyster,
      shiitake,
      wineCap: await species('stropharia_rugosoannulata'),
      hotWater,
      lime: await method('cold_lime_soak'),
      steam: await method('steam'),
      untreated: await method('untreated'),
      straw: await lot('STRAW-1', 'wheat_straw', 12),
      bran: await lot('BRAN-1', 'wheat_bran', null),
      logs: await lot('LOGS-1', 'hardwood_log', null),
      oysterSpawn: await spawn('SP-1', oyster),
      secondOysterSpawn: await spawn('SP-2', oyster),
      shiitakeSpawn: await spawn('SP-3', shiitake),
      bathRun,
    });
  });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value;
}

/** Lots, spawn and a treatment run of Larkmoor, for batches to be started from. */
export function shed({ coordinator, millLane }: Growers): Promise<Shed> {
  return insertShed(coordinator, millLane);
}

/** Twenty oyster bags on straw of one bath: 29.33 kg filled at 70 %, 1.2 kg of spawn, inoculated on 2026-04-01. */
export function twentyBags({ millLane }: Growers, of: Shed) {
  return {
    siteId: millLane,
    speciesId: of.oyster,
    containerKind: 'bag',
    unitCount: 20,
    inoculatedOn: '2026-04-01',
    components: [
      {
        lotId: of.straw,
        treatment: `run:${of.bathRun}`,
        role: 'substrate',
        mass: 10_000,
        massStage: 'before_treatment',
      },
    ],
    spawn: [{ lotId: of.oysterSpawn, mass: 1_200 }],
    filledMass: 29_330,
    moistureSource: 'measured',
    moisturePercent: 70,
  };
}

/** Ten kilograms of straw that nobody treated: what a batch of any site can be made of. */
export function untreatedStraw({ straw, untreated }: Shed) {
  return {
    ...{ lotId: straw, treatment: `method:${untreated}`, role: 'substrate' },
    ...{ mass: 10_000, massStage: 'before_treatment' },
  };
}

/** What the history keeps about a record, oldest first. */
export function historyOf(coordinator: Actor, recordId: string) {
  return readAs(coordinator, ({ db }) =>
    db.history.findMany({ where: { recordId }, orderBy: { id: 'asc' } }),
  );
}
