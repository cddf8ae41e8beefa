import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { countField, optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, idListField, optionalIdField } from '../fields/id-field';
import { numberField, optionalNumberField } from '../fields/number-field';
import { revisionField } from '../fields/revision-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField, textField } from '../fields/text-field';

export const trialOutcomes = ['contamination', 'yield'] as const;
/** Containers whose units are counted and whose yield is a biological efficiency. */
export const trialContainers = ['bag', 'bucket', 'tray', 'block'] as const;
export const mostArms = 4;

const armInput = z.object({ label: textField(80), methodId: optionalIdField });

const plan = {
  title: textField(100),
  question: textField(300),
  outcome: choiceField(trialOutcomes),
  speciesId: idField,
  containerKind: choiceField(trialContainers),
  arms: rowsField(armInput, mostArms, (row) => isBlank(row.label) && isBlank(row.methodId)),
  siteIds: idListField,
  unitsPerRun: countField({ most: 1000 }),
  expectedPercent: numberField({ least: 0.1, most: 400, places: 2 }),
  differencePoints: numberField({ least: -300, most: 300, places: 2 }),
  likeness: optionalNumberField({ least: 0, most: 1, places: 3 }),
  runSpreadPoints: optionalNumberField({ least: 0.1, most: 300, places: 2 }),
  powerPercent: countField({ least: 50, most: 99 }),
  /** Runs of each arm at each site; may be settled once the plan says how many it takes. */
  blocks: optionalCountField({ most: 50 }),
  startsOn: dateField,
  daysBetweenBlocks: countField({ least: 0, most: 365 }),
  lateAfterDays: countField({ least: 0, most: 365 }),
};

const whole = z.object(plan);
export type TrialPlan = z.output<typeof whole>;

export const planTrialInput = z.object({ id: optionalIdField, ...plan });
export const correctTrialInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...plan,
});

export const settleTrialSizeInput = z.object({
  id: idField,
  revision: revisionField,
  blocks: countField({ most: 50 }),
});

/** `seed` is heard from the demo only; anybody else's is drawn, so that nobody can look for a list they like. */
export const startTrialInput = z.object({ id: idField, seed: optionalTextField(40) });
export const endTrialInput = z.object({ id: idField, endNote: textField(1000) });
export const noteTrialInput = z.object({ id: optionalIdField, trialId: idField, note: textField(2000) });
