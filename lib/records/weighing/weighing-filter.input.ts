import { z } from 'zod';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalDateField } from '../fields/date-field';
import { optionalIdField } from '../fields/id-field';

/** The filter in the address of the list of weighings; anything unreadable counts as not given. */
export const weighingFilterInput = z.object({
  site: optionalIdField.catch(null),
  batch: optionalIdField.catch(null),
  from: optionalDateField.catch(null),
  to: optionalDateField.catch(null),
  voided: optionalChoiceField(['yes']).catch(null),
  after: z.string().max(60).nullable().catch(null).default(null),
});

export type WeighingFilter = z.output<typeof weighingFilterInput>;
