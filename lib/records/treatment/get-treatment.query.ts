import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { judgeRun } from '@/lib/growing/judge-run';
import { asCalendarDate } from '../fields/stored-date';
import { sitesAsShown } from '../sharing/sites-as-shown';
import { methodWindow } from './method-window';
import { readRun } from './read-run';

/** A run with its readings, the judgement against its window, and the batches the actor may see that it fed. */
export async function getTreatment(context: ReadContext, id: string, now: Date) {
  const { db } = context;
  const run = await readRun(db, id);
  if (!run) return undefined;
  const site = (await sitesAsShown(context, [run.siteId]))(run.siteId);
  const own = await db.site.findFirst({ where: { id: run.siteId }, select: { leftAt: true } });
  const readings = run.readings.map((reading) => ({
    id: reading.id,
    at: reading.readAt,
    place: reading.place,
    celsius: reading.celsius === null ? null : Number(reading.celsius),
    ph: reading.ph === null ? null : Number(reading.ph),
  }));
  const facts = {
    startedAt: run.startedAt,
    endedAt: run.endedAt,
    loadCelsiusAtSpawning: run.loadCelsiusAtSpawning === null ? null : Number(run.loadCelsiusAtSpawning),
  };
  const window = methodWindow(run.method);
  const batches = await db.batch.findMany({
    where: { voidedAt: null, components: { some: { treatmentRunId: id, voidedAt: null } } },
    include: { site: true },
    orderBy: { inoculatedOn: 'asc' },
    take: 200,
  });
  const allocations = await db.treatmentAllocation.findMany({
    where: { treatmentRunId: id, voidedAt: null },
    include: { site: true },
  });
  return {
    id: run.id,
    revision: run.revision,
    code: run.code,
    site,
    /** When its site left the network: what it recorded stays as it is. */
    siteLeftAt: own?.leftAt ?? null,
    method: { id: run.methodId, kind: run.method.kind, en: run.method.nameEn, es: run.method.nameEs },
    ...facts,
    waterMillilitres: run.waterMillilitres,
    limeGrams: run.limeGrams,
    loadGrams: run.loadGrams,
    note: run.note,
    readings,
    window,
    judgement: judgeRun(facts, readings, window, now),
    allocations: allocations.map((one) => ({ id: one.id, siteName: one.site.name, grams: one.grams })),
    batches: batches.map((batch) => ({
      id: batch.id,
      code: batch.code,
      siteName: batch.site.name,
      inoculatedOn: asCalendarDate(batch.inoculatedOn),
    })),
  };
}

/** A treatment run as its page shows it: instants UTC, temperatures in Celsius, water in millilitres, lime in grams. */
export type TreatmentView = NonNullable<Awaited<ReturnType<typeof getTreatment>>>;
