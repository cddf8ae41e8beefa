import { z } from 'zod';
import { dateField } from '../fields/date-field';
import { idField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

export const correctLookInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  lookedOn: dateField,
  note: optionalTextField(),
});
