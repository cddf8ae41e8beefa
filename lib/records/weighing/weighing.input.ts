import { z } from 'zod';
import { trimStates } from '@/lib/growing/vocabulary';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { enteredMassField, optionalEnteredMassField, optionalMassField } from '../fields/mass-field';
import { revisionField } from '../fields/revision-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField, textField } from '../fields/text-field';

const mostBatches = 12;

/** One batch in the crate. Without a mass of its own it gets its share by live units. */
const lineInput = z.object({
  batchId: idField,
  flush: optionalCountField({ most: 60 }),
  fresh: optionalMassField(),
  forcedFlush: optionalChoiceField(['yes', 'no']),
});

const linesField = rowsField(lineInput, mostBatches, (row) => isBlank(row.batchId));

const weighingFields = {
  weighedOn: dateField,
  fresh: enteredMassField(),
  trimState: optionalChoiceField(trimStates),
  lines: linesField,
  sold: optionalMassField(),
  given: optionalMassField(),
  kept: optionalMassField(),
  discarded: optionalMassField(),
  grade: optionalTextField(60),
  note: optionalTextField(),
};

/** What the crate or bucket weighed when it stood on the scale too; the fresh mass is the rest. */
const tareField = optionalEnteredMassField({ zero: true });

export const recordWeighingInput = z
  .object({ id: optionalIdField, ...weighingFields, tare: tareField })
  .transform((input, context) => {
    const { tare } = input;
    if (tare === null || tare.grams === 0) return { ...input, tare: null };
    const grams = input.fresh.grams - tare.grams;
    if (grams <= 0) context.addIssue({ code: 'custom', message: 'tare-too-heavy', path: ['tare'] });
    const entered = tare.entered ?? { text: String(tare.grams), unit: 'g' };
    return { ...input, fresh: { ...input.fresh, grams }, tare: entered };
  });

export const correctWeighingInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...weighingFields,
});

/** A weighing as both commands read it. */
export type WeighingInput = Omit<z.output<typeof correctWeighingInput>, 'id' | 'revision' | 'reason'>;
