import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import { asDate } from '@/lib/records/fields/stored-date';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import type { Growers } from '../../support/growers';
import type { Shed } from '../../support/shed';

export type DrawnEnd = { readonly kind: TracedKind; readonly id: string; readonly voided: boolean };
/** A record of a link, counting or not, as it was drawn. */
export type DrawnLink = { readonly from: DrawnEnd; readonly to: DrawnEnd; readonly voided: boolean };

export type DrawnNetwork = { readonly ends: readonly DrawnEnd[]; readonly links: readonly DrawnLink[] };

const day = asDate('2026-04-01');
const gone = (voided: boolean) =>
  voided ? { voidedAt: new Date('2026-05-01T12:00:00Z'), voidReason: 'drawn as voided' } : {};

/**
 * A small network of lots made from lots, materials, baths, batches at two sites, second lives of batches and of second lives,
 * and crates with one or more batches in them; about one record in eight is voided, ends and links alike.
 */
export async function drawNetwork(
  coordinator: Actor,
  people: Growers,
  stock: Shed,
  random: SeededRandom,
): Promise<DrawnNetwork> {
  const ends: DrawnEnd[] = [];
  const links: DrawnLink[] = [];
  const chance = (p: number) => random.next() < p;
  const oneOf = <T>(some: readonly T[]): T => {
    const one = some[Math.floor(random.next() * some.length)];
    if (one === undefined) throw new Error('nothing to choose from');
    return one;
  };
  const end = (kind: TracedKind): DrawnEnd => {
    const made = { kind, id: newId(), voided: chance(0.12) };
    ends.push(made);
    return made;
  };
  const link = (from: DrawnEnd, to: DrawnEnd): boolean => {
    const voided = chance(0.12);
    links.push({ from, to, voided });
    return voided;
  };
  const result = await writeAs(coordinator, { reason: 'drawn' }, async ({ db, actor }) => {
    const { networkId } = actor;
    const { materialId } = await db.substrateLot.findFirstOrThrow({ where: { id: stock.straw } });
    const lots: DrawnEnd[] = [];
    for (let at = 0; at < 6; at += 1) {
      const lot = end('spawn-lot');
      // The column that names a parent cannot be voided by itself.
      const parent = lots.length > 0 && chance(0.5) ? oneOf(lots) : undefined;
      if (parent) links.push({ from: parent, to: lot, voided: false });
      lots.push(lot);
      const columns = { id: lot.id, code: `L${lot.id}`, speciesId: stock.oyster, form: 'grain' as const };
      await db.spawnLot.create({
        data: { networkId, ...columns, parentLotId: parent?.id ?? null, ...gone(lot.voided) },
      });
    }
    const materials: DrawnEnd[] = [];
    for (let at = 0; at < 3; at += 1) {
      const lot = end('substrate-lot');
      materials.push(lot);
      const columns = { id: lot.id, code: `M${lot.id}`, materialId, receivedOn: day };
      await db.substrateLot.create({
        data: { networkId, ...columns, moistureSource: 'none', ...gone(lot.voided) },
      });
    }
    const runs: DrawnEnd[] = [];
    for (let at = 0; at < 3; at += 1) {
      const run = end('treatment');
      runs.push(run);
      const columns = { id: run.id, code: `R${run.id}`, siteId: people.millLane, methodId: stock.hotWater };
      await db.treatmentRun.create({ data: { networkId, ...columns, startedAt: day, ...gone(run.voided) } });
    }
    const batches: { readonly end: DrawnEnd; readonly siteId: string }[] = [];
    for (let at = 0; at < 12; at += 1) {
      const batch = end('batch');
      const siteId = oneOf([people.millLane, people.quarry]);
      await db.batch.create({
        data: {
          ...{ networkId, id: batch.id, code: `B${batch.id}`, siteId, speciesId: stock.oyster },
          ...{ containerKind: 'bag', unitCount: 40, inoculatedOn: day, moistureSource: 'none' },
          ...{ dryMassFrom: 'none', ...gone(batch.voided) },
        },
      });
      const part = { networkId, batchId: batch.id, siteId };
      for (let n = 0; n < 2; n += 1) {
        const lot = oneOf(lots);
        await db.spawnShare.create({ data: { ...part, spawnLotId: lot.id, ...gone(link(lot, batch)) } });
        const material = oneOf(materials);
        const run = chance(0.6) ? oneOf(runs) : undefined;
        const voided = link(material, batch);
        if (run) links.push({ from: run, to: batch, voided });
        await db.batchComponent.create({
          data: {
            ...{ ...part, substrateLotId: material.id, methodId: stock.hotWater, massStage: 'filled' },
            ...{ treatmentRunId: run?.id ?? null, role: 'substrate', ...gone(voided) },
          },
        });
      }
      for (const source of random.shuffle(batches).slice(0, chance(0.5) ? 0 : 2))
        await db.secondLifeSource.create({
          data: {
            ...{ ...part, sourceBatchId: source.end.id, sourceSiteId: source.siteId, unitsMoved: 1 },
            ...gone(link(source.end, batch)),
          },
        });
      batches.push({ end: batch, siteId });
    }
    for (let at = 0; at < 12; at += 1) {
      const siteId = oneOf(batches).siteId;
      const picked = random.shuffle(batches.filter((batch) => batch.siteId === siteId)).slice(0, 3);
      const crate = end('weighing');
      const lines = picked.map((batch) => ({ batch, voided: link(batch.end, crate) }));
      const freshGrams = Math.max(1, lines.filter(({ voided }) => !voided).length * 100);
      // A crate holds what its lines say: one without a line that counts is voided.
      const voided = crate.voided || lines.every((line) => line.voided);
      ends[ends.indexOf(crate)] = { ...crate, voided };
      const columns = { networkId, id: crate.id, siteId, weighedOn: asDate('2026-05-10'), freshGrams };
      await db.weighing.create({ data: { ...columns, trimState: 'as_picked', ...gone(voided) } });
      for (const line of lines)
        await db.weighingLine.create({
          data: {
            ...{ networkId, weighingId: crate.id, siteId, batchId: line.batch.end.id, flush: 1 },
            ...{ freshGrams: 100, ...gone(line.voided) },
          },
        });
    }
    return ok({});
  });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  const byId = new Map(ends.map((one) => [one.id, one]));
  const now = (one: DrawnEnd) => byId.get(one.id) ?? one;
  return { ends, links: links.map(({ from, to, voided }) => ({ from: now(from), to: now(to), voided })) };
}
