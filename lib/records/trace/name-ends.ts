import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { secondLifeEnds } from '../batch/moved-units';
import { asCalendarDate } from '../fields/stored-date';
import { inParts } from './in-parts';
import type { TracedKind, TraceEnd } from './trace-link';
import type { TraceName } from './trace-view';

const nothing = { siteName: null, what: null, maker: null, on: null, visible: true };
const twoNames = { select: { nameEn: true, nameEs: true } } as const;
const siteName = { select: { name: true } } as const;

type Voiding = { readonly voidedAt: Date | null; readonly voidReason: string | null };
const voidedOf = ({ voidedAt, voidReason }: Voiding) => (voidedAt === null ? null : (voidReason ?? ''));
const named = ({ nameEn, nameEs }: { nameEn: string; nameEs: string }) => ({ en: nameEn, es: nameEs });
const dayOf = (date: Date | null) => (date === null ? null : asCalendarDate(date));

/** What things of a trace are called, of those the actor may see, voided ones too. */
export async function nameEnds(db: ScopedDb, ends: readonly TraceEnd[]): Promise<Map<string, TraceName>> {
  const ids = (kind: TracedKind) => [...new Set(ends.filter((end) => end.kind === kind).map(({ id }) => id))];
  const names: TraceName[] = [];
  for (const lot of await inParts(ids('spawn-lot'), (part) =>
    db.spawnLot.findMany({ where: { id: { in: part } }, include: { species: twoNames } }),
  ))
    names.push({
      ...{ ...nothing, kind: 'spawn-lot', id: lot.id, code: lot.code, what: named(lot.species) },
      ...{ maker: lot.maker, on: dayOf(lot.madeOn ?? lot.receivedOn), voided: voidedOf(lot) },
    });
  for (const lot of await inParts(ids('substrate-lot'), (part) =>
    db.substrateLot.findMany({ where: { id: { in: part } }, include: { material: twoNames } }),
  ))
    names.push({
      ...{ ...nothing, kind: 'substrate-lot', id: lot.id, code: lot.code, what: named(lot.material) },
      ...{ maker: lot.sourceName, on: asCalendarDate(lot.receivedOn), voided: voidedOf(lot) },
    });
  for (const run of await inParts(ids('treatment'), (part) =>
    db.treatmentRun.findMany({ where: { id: { in: part } }, include: { method: twoNames } }),
  ))
    names.push({
      ...{ ...nothing, kind: 'treatment', id: run.id, code: run.code, what: named(run.method) },
      ...{ on: asCalendarDate(run.startedAt), voided: voidedOf(run) },
    });
  for (const batch of await inParts(ids('batch'), (part) =>
    db.batch.findMany({ where: { id: { in: part } }, include: { site: siteName, species: twoNames } }),
  ))
    names.push({
      ...{ ...nothing, kind: 'batch', id: batch.id, code: batch.code, what: named(batch.species) },
      ...{ siteName: batch.site.name, on: asCalendarDate(batch.inoculatedOn), voided: voidedOf(batch) },
    });
  for (const weighing of await inParts(ids('weighing'), (part) =>
    db.weighing.findMany({ where: { id: { in: part } }, include: { site: siteName } }),
  ))
    names.push({
      ...{ ...nothing, kind: 'weighing', id: weighing.id, code: null, siteName: weighing.site.name },
      ...{ on: asCalendarDate(weighing.weighedOn), voided: voidedOf(weighing) },
    });
  return new Map(names.map((name) => [name.id, name]));
}

/** Codes and sites of batches out of sight, as the batches at the other end of their second lives know them. */
export async function nameOutOfSight(
  db: ScopedDb,
  pairs: readonly { readonly seen: string; readonly hidden: string }[],
): Promise<Map<string, TraceName>> {
  const wanted = new Set(pairs.map(({ hidden }) => hidden));
  const names = new Map<string, TraceName>();
  for (const seen of new Set(pairs.map((pair) => pair.seen)))
    for (const end of await secondLifeEnds({ db }, seen))
      if (wanted.has(end.batchId))
        names.set(end.batchId, {
          ...{ ...nothing, kind: 'batch', id: end.batchId, code: end.code, siteName: end.siteName },
          ...{ voided: null, visible: false },
        });
  return names;
}
