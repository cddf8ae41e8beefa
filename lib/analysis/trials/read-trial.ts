import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { departuresOf } from '@/lib/growing/trial-departure';
import { type JudgedBatch, judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import type { TrialData, TrialRun } from './trial-run';

/** A trial's drawn list with the outcome of each run as of `now`; undefined when it is not there or has not started. */
export async function readTrial(context: ReadContext, id: string, now: Date): Promise<TrialData | undefined> {
  const { db } = context;
  const trial = await db.trial.findFirst({
    where: { id, voidedAt: null, startedAt: { not: null } },
    include: {
      arms: { where: { voidedAt: null }, orderBy: { place: 'asc' } },
      slots: { where: { voidedAt: null }, include: { site: true, batch: true }, orderBy: { place: 'asc' } },
    },
  });
  if (!trial) return undefined;
  const days = trial.slots
    .flatMap(({ batch }) => batch?.inoculatedOn.toISOString().slice(0, 10) ?? [])
    .sort();
  const own = new Set(trial.slots.flatMap(({ batchId }) => batchId ?? []));
  const [from, to] = [days[0], days.at(-1)];
  const sites = [...new Set(trial.slots.map(({ siteId }) => siteId))];
  const rows = from && to ? await readBatchRows(context, { from, to, sites, batches: [...own] }) : [];
  const today = new Map(trial.slots.map(({ site }) => [site.id, todayInZone(site.timeZone, now)]));
  const judged = new Map(judgeBatches(rows, today).map((batch) => [batch.facts.id, batch]));
  const batchOf = (batchId: string | null) => (batchId === null ? undefined : judged.get(batchId));
  const runs = trial.slots.map((slot): TrialRun => {
    const batch = batchOf(slot.batchId);
    const same = { slotId: slot.id, siteId: slot.siteId, armId: slot.armId };
    if (batch === undefined)
      return {
        ...same,
        made: false,
        load: `slot:${slot.id}`,
        units: 0,
        outcome: { kind: 'not-made' },
        departures: slot.departure === null ? [] : ['told'],
      };
    const { facts } = batch;
    const others = trial.slots.filter(({ id: other }) => other !== slot.id);
    const earlier = others.filter(({ siteId, place }) => siteId === slot.siteId && place < slot.place);
    return {
      ...same,
      made: true,
      load: batch.runCluster,
      units: facts.unitCount,
      outcome: outcomeOf(batch, trial.outcome),
      departures: departuresOf({
        plannedMethodId: trial.arms.find((arm) => arm.id === slot.armId)?.methodId ?? null,
        plannedSpeciesId: trial.speciesId,
        plannedContainer: trial.containerKind,
        plannedUnits: trial.unitsPerRun,
        plannedOn: slot.plannedOn.toISOString().slice(0, 10),
        lateAfterDays: trial.lateAfterDays,
        methodId: facts.methodId,
        speciesId: facts.speciesId,
        container: facts.containerKind,
        units: facts.unitCount,
        inoculatedOn: facts.inoculatedOn,
        outOfOrder: earlier.some((one) => {
          const before = batchOf(one.batchId);
          return before === undefined || before.facts.inoculatedOn > facts.inoculatedOn;
        }),
        sharedRun: others.some((one) => batchOf(one.batchId)?.runCluster === batch.runCluster),
        told: slot.departure,
      }),
    };
  });
  return {
    outcome: trial.outcome,
    arms: trial.arms.map(({ id: armId, label }) => ({ id: armId, label })),
    runs,
  };
}

function outcomeOf(
  { contamination, yield: given }: JudgedBatch,
  of: TrialData['outcome'],
): TrialRun['outcome'] {
  if (of === 'contamination')
    return contamination.kind === 'counted'
      ? { kind: 'counted', numerator: contamination.byWindowEnd, denominator: contamination.units }
      : contamination;
  return given.kind === 'counted'
    ? { kind: 'counted', numerator: given.freshGrams, denominator: given.over }
    : given;
}
