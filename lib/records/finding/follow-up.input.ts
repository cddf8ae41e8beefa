import { z } from 'zod';
import { findingActions } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { countField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const followUpFields = {
  doneOn: dateField,
  action: choiceField(findingActions),
  /** Of the finding's units; the count of contaminated units never changes by it. */
  units: countField(),
  note: optionalTextField(),
};

export const recordFollowUpInput = z.object({ id: optionalIdField, findingId: idField, ...followUpFields });

export const correctFollowUpInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...followUpFields,
});

export type FollowUpInput = Omit<z.output<typeof recordFollowUpInput>, 'id' | 'findingId'>;
