import { z } from 'zod';
import { containerKinds } from '@/lib/growing/vocabulary';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalDateField } from '../fields/date-field';
import { optionalIdField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

const cursor = z.string().max(60).nullable().catch(null).default(null);

/** The filter in the address of the list of batches; anything unreadable counts as not given. */
export const batchFilterInput = z.object({
  site: optionalIdField.catch(null),
  /** The id of a method, or `mixed`. */
  method: z.union([z.literal('mixed'), optionalIdField]).catch(null),
  species: optionalIdField.catch(null),
  container: optionalChoiceField(containerKinds).catch(null),
  state: optionalChoiceField(['open', 'closed']).catch(null),
  /** Inoculated from and to these days, both included. */
  from: optionalDateField.catch(null),
  to: optionalDateField.catch(null),
  code: optionalTextField(40).catch(null),
  voided: optionalChoiceField(['yes']).catch(null),
  after: cursor,
  before: cursor,
});

export type BatchFilter = z.output<typeof batchFilterInput>;
