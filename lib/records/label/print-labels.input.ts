import { z } from 'zod';
import { choiceField, optionalChoiceField } from '../fields/choice-field';
import { countField } from '../fields/count-field';
import { idListField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';
import { unitNumbersField } from '../fields/unit-numbers-field';

export const mostBatchesToLabel = 40;

/** Which labels to print and on what, as the address of the page says it. */
export const printLabelsInput = z.object({
  batch: idListField.refine((ids) => ids.length <= mostBatchesToLabel, {
    message: 'too-many-batches',
    params: { max: mostBatchesToLabel },
  }),
  /** Key of a ready sheet or id of one of the network's own; null takes the usual one of the reader's region. */
  sheet: optionalTextField(60),
  per: choiceField(['unit', 'batch']).catch('unit'),
  units: unitNumbersField,
  copies: countField({ most: 100 }).prefault('1'),
  /** First free place of the first sheet, from 1. */
  from: countField({ most: 1000 }).prefault('1'),
  outline: optionalChoiceField(['yes']),
});

export type PrintLabels = z.output<typeof printLabelsInput>;
