import { getLocale } from 'next-intl/server';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { dateValues } from '../form/date-values';
import type { FormState } from '../form/field-spec';
import { formatNumber } from '../format/number-text';

/** What the boxes hold of a plan that can still be changed, as the reader writes numbers. */
export async function trialValues(trial: TrialView): Promise<FormState['values']> {
  const locale = await getLocale();
  const decimal = (value: number | null, digits: number) =>
    value === null ? '' : formatNumber(value, locale, Number.isInteger(value) ? 0 : digits);
  return {
    id: trial.id,
    revision: String(trial.revision),
    title: trial.title,
    question: trial.question,
    outcome: trial.outcome,
    speciesId: trial.speciesId,
    containerKind: trial.containerKind,
    ...Object.fromEntries(
      trial.arms.flatMap(({ label, methodId }, index) => [
        [`arms.${index}.label`, label],
        [`arms.${index}.methodId`, methodId ?? ''],
      ]),
    ),
    siteIds: trial.sites.map(({ id }) => id),
    unitsPerRun: String(trial.unitsPerRun),
    expectedPercent: decimal(trial.expectedPercent, 2),
    differencePoints: decimal(trial.differencePoints, 2).replace('\u2212', '-'),
    likeness: decimal(trial.likeness, 3),
    runSpreadPoints: decimal(trial.runSpreadPoints, 2),
    powerPercent: String(trial.powerPercent),
    blocks: trial.blocks === null ? '' : String(trial.blocks),
    ...dateValues('startsOn', trial.startsOn),
    daysBetweenBlocks: String(trial.daysBetweenBlocks),
    lateAfterDays: String(trial.lateAfterDays),
  };
}
