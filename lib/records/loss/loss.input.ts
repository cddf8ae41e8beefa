import { z } from 'zod';
import { lossCauseKinds } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { countField, optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';
import { unitNumbersField } from '../fields/unit-numbers-field';

const lossFields = {
  lostOn: dateField,
  units: countField(),
  /** How many of them had been found contaminated before; none when left out. */
  contaminatedUnits: optionalCountField({ least: 0 }),
  cause: choiceField(lossCauseKinds),
  unitNumbers: unitNumbersField,
  note: optionalTextField(),
};

export const recordLossInput = z.object({ id: optionalIdField, batchId: idField, ...lossFields });

export const correctLossInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...lossFields,
});

export type LossInput = Omit<z.output<typeof recordLossInput>, 'id' | 'batchId'>;
