import { z } from 'zod';
import { dateField, optionalDateField } from '@/lib/records/fields/date-field';
import { idField } from '@/lib/records/fields/id-field';

export const rebuildDraftInput = z.object({
  id: idField,
  from: dateField,
  to: dateField,
  baselineFrom: optionalDateField,
  baselineTo: optionalDateField,
});
