import { z } from 'zod';
import { choiceField, optionalChoiceField } from '../fields/choice-field';
import { dateField } from '../fields/date-field';
import { idField } from '../fields/id-field';

export const closeReasons = ['finished', 'contaminated', 'lost', 'moved_on', 'other'] as const;
export const spentDestinations = [
  'composted',
  'second_life',
  'mulch',
  'animal_bedding',
  'discarded',
  'other',
] as const;
export const noHarvestAnswers = ['none_picked', 'not_weighed'] as const;

export const closeBatchInput = z.object({
  batchId: idField,
  closedOn: dateField,
  closeReason: choiceField(closeReasons),
  spentDestination: choiceField(spentDestinations),
  /** Asked only when nothing was weighed from the batch. */
  noHarvest: optionalChoiceField(noHarvestAnswers),
});
