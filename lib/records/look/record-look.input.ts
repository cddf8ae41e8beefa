import { z } from 'zod';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

/** "Looked at all units, none newly contaminated." */
export const recordLookInput = z.object({
  id: optionalIdField,
  batchId: idField,
  lookedOn: dateField,
  note: optionalTextField(),
});
