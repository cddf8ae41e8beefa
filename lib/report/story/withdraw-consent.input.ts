import { z } from 'zod';
import { choiceField } from '@/lib/records/fields/choice-field';
import { dateField } from '@/lib/records/fields/date-field';
import { idField } from '@/lib/records/fields/id-field';

export const withdrawConsentInput = z.object({
  id: idField,
  /** What those in it no longer agree to: the picture, or being told of at all. */
  part: choiceField(['picture', 'story']),
  withdrawnOn: dateField,
});
