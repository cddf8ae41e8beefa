import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { asDate } from '../fields/stored-date';
import type { TrialPlan } from './trial.input';

/** The columns of a plan; of the two measures of variation only the one that its outcome has. */
export function planColumns(plan: TrialPlan) {
  const counts = plan.outcome === 'contamination';
  return {
    title: plan.title,
    question: plan.question,
    outcome: plan.outcome,
    speciesId: plan.speciesId,
    containerKind: plan.containerKind,
    unitsPerRun: plan.unitsPerRun,
    expectedPercent: plan.expectedPercent,
    differencePoints: plan.differencePoints,
    likeness: counts ? plan.likeness : null,
    runSpreadPoints: counts ? null : plan.runSpreadPoints,
    powerPercent: plan.powerPercent,
    blocks: plan.blocks,
    startsOn: asDate(plan.startsOn),
    daysBetweenBlocks: plan.daysBetweenBlocks,
    lateAfterDays: plan.lateAfterDays,
  };
}

/** Writes arms and sites of a plan; what a correction replaces is voided first. */
export async function writePlanParts(
  { db, actor, origin }: WriteContext,
  trialId: string,
  { arms, siteIds }: TrialPlan,
): Promise<void> {
  const own = { networkId: actor.networkId, trialId, origin, createdById: actor.personId };
  await db.trialArm.createMany({
    data: arms.map((arm, index) => ({ ...own, id: newId(), ...arm, place: index + 1 })),
  });
  await db.trialSite.createMany({
    data: [...new Set(siteIds)].map((siteId) => ({ ...own, id: newId(), siteId })),
  });
}
