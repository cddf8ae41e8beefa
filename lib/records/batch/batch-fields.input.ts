import { z } from 'zod';
import { componentRoles, containerKinds, moistureSources } from '@/lib/growing/vocabulary';
import { optionalAreaField } from '../fields/area-field';
import { choiceField, optionalChoiceField } from '../fields/choice-field';
import { countField, optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalLengthField } from '../fields/length-field';
import { optionalEnteredMassField, optionalMassField } from '../fields/mass-field';
import { optionalMoistureField } from '../fields/percent-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField } from '../fields/text-field';
import { treatmentChoiceField } from './treatment-choice-field';

export const massStages = ['before_treatment', 'filled'] as const;
export const filledWithChoices = ['substrate_only', 'with_spawn'] as const;
export const mostComponents = 4;
export const mostSpawnShares = 3;

export const componentInput = z.object({
  lotId: idField,
  treatment: treatmentChoiceField,
  role: choiceField(componentRoles),
  mass: optionalMassField(),
  massStage: choiceField(massStages),
});

export const spawnInput = z.object({ lotId: idField, mass: optionalMassField() });

/** What is written down when a batch is started; the fields of a container kind are ignored by the others. */
export const batchFields = {
  siteId: idField,
  speciesId: idField,
  containerKind: choiceField(containerKinds),
  unitCount: countField(),
  inoculatedOn: dateField,
  startedById: optionalIdField,
  components: rowsField(componentInput, mostComponents, (row) => isBlank(row.lotId) && isBlank(row.mass)),
  spawn: rowsField(spawnInput, mostSpawnShares, (row) => isBlank(row.lotId) && isBlank(row.mass)),
  filledMass: optionalEnteredMassField(),
  /** Whether the mass filled has the spawn in it, which is then taken off. */
  filledWith: optionalChoiceField(filledWithChoices),
  moistureSource: choiceField(moistureSources),
  moisturePercent: optionalMoistureField(),
  bedArea: optionalAreaField(),
  logWoodCode: optionalCountField({ most: 999 }),
  logDiameter: optionalLengthField(),
  logLength: optionalLengthField(),
  /** Mean green mass of one log. */
  logGreenMass: optionalMassField(),
  note: optionalTextField(),
};

const whole = z.object(batchFields);
export type BatchInput = z.output<typeof whole>;
export type ComponentInput = z.output<typeof componentInput>;
