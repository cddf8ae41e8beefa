import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

export const checkKinds = ['fully_colonised', 'pins_seen'] as const;

const checkFields = { kind: choiceField(checkKinds), checkedOn: dateField, note: optionalTextField() };

export const recordCheckInput = z.object({ id: optionalIdField, batchId: idField, ...checkFields });

export const correctCheckInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...checkFields,
});
