import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';
import { armLabel } from './arm-label';
import { readSlots } from './read-slots';
import { trialStateOf } from './trial-state';

/** One trial: its plan, the drawn list at the sites that the reader sees, and its notes; undefined when not theirs. */
export async function getTrial(context: ReadContext, id: string, now: Date) {
  const { db, actor } = context;
  const trial = await db.trial.findFirst({
    where: { id, voidedAt: null },
    include: {
      species: true,
      arms: { where: { voidedAt: null }, orderBy: { place: 'asc' }, include: { method: true } },
      sites: { where: { voidedAt: null }, include: { site: true } },
      notes: { orderBy: { notedAt: 'asc' } },
      result: { select: { id: true, shownToFundersAt: true } },
    },
  });
  if (!trial) return undefined;
  const slots = trial.startedAt === null ? [] : await readSlots(context, trial, now);
  const { species, likeness, runSpreadPoints } = trial;
  return {
    id: trial.id,
    revision: trial.revision,
    state: trialStateOf(trial),
    title: trial.title,
    question: trial.question,
    outcome: trial.outcome,
    speciesId: trial.speciesId,
    species: { en: species.nameEn, es: species.nameEs },
    containerKind: trial.containerKind,
    unitsPerRun: trial.unitsPerRun,
    expectedPercent: Number(trial.expectedPercent),
    differencePoints: Number(trial.differencePoints),
    likeness: likeness === null ? null : Number(likeness),
    runSpreadPoints: runSpreadPoints === null ? null : Number(runSpreadPoints),
    powerPercent: trial.powerPercent,
    blocks: trial.blocks,
    startsOn: asCalendarDate(trial.startsOn),
    /** Today for the network. */
    today: todayInZone(actor.networkTimeZone, now),
    daysBetweenBlocks: trial.daysBetweenBlocks,
    lateAfterDays: trial.lateAfterDays,
    seed: trial.seed,
    startedAt: trial.startedAt?.toISOString() ?? null,
    endedAt: trial.endedAt?.toISOString() ?? null,
    endNote: trial.endNote,
    arms: trial.arms.map(({ id: armId, label, methodId, method }) => ({
      id: armId,
      label,
      said: armLabel(label, method, actor.language),
      methodId,
      method: method && { en: method.nameEn, es: method.nameEs, kind: method.kind },
    })),
    sites: trial.sites
      .map(({ site }) => ({ id: site.id, name: site.name, code: site.code }))
      .sort((a, b) => a.name.localeCompare(b.name)),
    slots,
    notes: trial.notes.map(({ id: noteId, notedAt, note }) => ({
      id: noteId,
      notedAt: notedAt.toISOString(),
      note,
    })),
    shownToFunders: trial.result !== null && trial.result.shownToFundersAt !== null,
  };
}

export type TrialView = NonNullable<Awaited<ReturnType<typeof getTrial>>>;
