import { z } from 'zod';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalIdField } from '../fields/id-field';

/** The filter in the address of the list of treatments. */
export const treatmentFilterInput = z.object({
  site: optionalIdField.catch(null),
  method: optionalIdField.catch(null),
  state: optionalChoiceField(['running', 'ended']).catch(null),
  after: z.string().max(60).nullable().catch(null).default(null),
});

export type TreatmentFilter = z.output<typeof treatmentFilterInput>;
