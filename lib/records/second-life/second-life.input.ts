import { z } from 'zod';
import { secondLifeWays } from '@/lib/growing/vocabulary';
import { batchFields } from '../batch/batch-fields.input';
import { bedLayersField } from '../bed-layer/bed-layer.input';
import { optionalChoiceField } from '../fields/choice-field';
import { countField } from '../fields/count-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField, textField } from '../fields/text-field';

export const mostSources = 6;

/** A spent batch and how many of its units went on. */
const sourceInput = z.object({ batchId: idField, units: countField() });

const sources = rowsField(sourceInput, mostSources, (row) => isBlank(row.batchId) || isBlank(row.units));

const way = optionalChoiceField(secondLifeWays);

export const startSecondLifeInput = z.object({
  id: optionalIdField,
  code: optionalTextField(20),
  sources,
  way,
  layers: bedLayersField,
  ...batchFields,
});

export const correctSecondLifeInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  sources,
  way,
  ...batchFields,
});

export type SourceInput = z.output<typeof sourceInput>;
