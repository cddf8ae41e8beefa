import { z } from 'zod';
import { batchFields } from '../batch/batch-fields.input';
import { countField } from '../fields/count-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField, textField } from '../fields/text-field';

export const mostSources = 6;

/** A spent batch and how many of its units went on. */
const sourceInput = z.object({ batchId: idField, units: countField() });

const sources = rowsField(sourceInput, mostSources, (row) => isBlank(row.batchId) || isBlank(row.units));

export const startSecondLifeInput = z.object({
  id: optionalIdField,
  code: optionalTextField(20),
  sources,
  ...batchFields,
});

export const correctSecondLifeInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  sources,
  ...batchFields,
});

export type SourceInput = z.output<typeof sourceInput>;
