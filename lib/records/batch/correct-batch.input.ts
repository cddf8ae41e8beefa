import { z } from 'zod';
import { idField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';
import { batchFields } from './batch-fields.input';

export const correctBatchInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...batchFields,
});
