import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import type { TrialPlan } from './trial.input';

/** What no trial can be: fewer than two arms, no site, a rate that cannot be, or no measure of how runs vary. */
export async function checkTrialPlan({ db }: WriteContext, plan: TrialPlan): Promise<FieldError[]> {
  const errors: FieldError[] = [];
  const refuse = (field: string, code: string, values?: FieldError['values']) =>
    errors.push(values === undefined ? { field, code } : { field, code, values });
  const { arms, siteIds, outcome, expectedPercent, differencePoints } = plan;
  if (arms.length < 2) refuse(`arms.${arms.length}.label`, 'missing');
  const labels = arms.map(({ label }) => label.toLowerCase());
  labels.forEach((label, index) => {
    if (labels.indexOf(label) < index) refuse(`arms.${index}.label`, 'already-there');
  });
  if (siteIds.length === 0) refuse('siteIds', 'missing-choice');
  const open = { voidedAt: null, closedOn: null };
  if (
    siteIds.length > 0 &&
    (await db.site.count({ where: { id: { in: siteIds }, ...open } })) < siteIds.length
  )
    refuse('siteIds', 'not-an-option');
  if ((await db.species.count({ where: { id: plan.speciesId, voidedAt: null } })) === 0)
    refuse('speciesId', 'not-an-option');
  for (const [index, { methodId }] of arms.entries())
    if (methodId !== null && (await db.method.count({ where: { id: methodId, voidedAt: null } })) === 0)
      refuse(`arms.${index}.methodId`, 'not-an-option');
  if (differencePoints === 0) refuse('differencePoints', 'trial-no-difference');
  const other = expectedPercent + differencePoints;
  if (outcome === 'contamination') {
    if (expectedPercent >= 100) refuse('expectedPercent', 'too-large', { max: '99.9' });
    else if (other <= 0 || other >= 100) refuse('differencePoints', 'trial-difference-range');
    if (plan.likeness === null) refuse('likeness', 'missing');
  } else {
    if (other < 0) refuse('differencePoints', 'trial-difference-range');
    if (plan.runSpreadPoints === null) refuse('runSpreadPoints', 'missing');
  }
  return errors;
}
