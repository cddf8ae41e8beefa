import { z } from 'zod';
import { practiceKinds } from '@/lib/growing/programme-vocabulary';
import { choiceField } from '../fields/choice-field';
import { optionalCountField } from '../fields/count-field';
import { dateField, optionalDateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const practice = {
  practice: choiceField(practiceKinds),
  description: optionalTextField(500),
  since: dateField,
  /** Blank while it goes on. */
  until: optionalDateField,
  growers: optionalCountField(),
};

export const recordPracticeInput = z.object({ id: optionalIdField, siteId: idField, ...practice });

export const correctPracticeInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...practice,
});
