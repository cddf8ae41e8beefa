import { z } from 'zod';
import { contaminationSignKinds, findingActions } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { countField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';
import { unitNumbersField } from '../fields/unit-numbers-field';

export const cropStages = ['colonising', 'cropping'] as const;

const findingFields = {
  foundOn: dateField,
  /** Units newly found contaminated; never those found before. */
  units: countField(),
  sign: choiceField(contaminationSignKinds),
  stage: choiceField(cropStages),
  action: choiceField(findingActions),
  unitNumbers: unitNumbersField,
  note: optionalTextField(),
};

export const recordFindingInput = z.object({ id: optionalIdField, batchId: idField, ...findingFields });

export const correctFindingInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...findingFields,
});

export type FindingInput = Omit<z.output<typeof recordFindingInput>, 'id' | 'batchId'>;
