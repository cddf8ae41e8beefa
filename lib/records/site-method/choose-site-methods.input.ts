import { z } from 'zod';
import { idField, idListField } from '../fields/id-field';
import { textField } from '../fields/text-field';

/** Methods that a site can use; those left out it cannot. `revision`: how often the list had been changed when it was shown. */
export const chooseSiteMethodsInput = z.object({
  id: idField,
  revision: z.coerce.number('missing').int('not-whole').nonnegative('not-whole'),
  methodIds: idListField,
  reason: textField(1000),
});
