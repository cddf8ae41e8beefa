import { z } from 'zod';
import { outletKinds, practiceKinds, trainingTopics } from '@/lib/growing/programme-vocabulary';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalDateField } from '../fields/date-field';
import { optionalIdField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

export const programmeRowsPerPage = 50;

/** The filter in the address of a list of the programme; anything unreadable counts as not given. */
export const programmeFilterInput = z.object({
  site: optionalIdField.catch(null),
  from: optionalDateField.catch(null),
  to: optionalDateField.catch(null),
  topic: optionalChoiceField(trainingTopics).catch(null),
  outlet: optionalChoiceField(outletKinds).catch(null),
  practice: optionalChoiceField(practiceKinds).catch(null),
  name: optionalTextField(120).catch(null),
  after: z.string().max(60).nullable().catch(null).default(null),
});

export type ProgrammeFilter = z.output<typeof programmeFilterInput>;
