import { z } from 'zod';
import { bedLayersField } from '../bed-layer/bed-layer.input';
import { optionalIdField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';
import { batchFields } from './batch-fields.input';

/** A batch that is no second life is made of something; asked for together with whatever else is missing. */
const components = batchFields.components.superRefine((rows, context) => {
  if (rows.length === 0) context.addIssue({ code: 'custom', message: 'missing-choice', path: [0, 'lotId'] });
});

export const startBatchInput = z.object({
  id: optionalIdField,
  /** A code of the grower's own choice, such as one already written on the bags; drawn when left out. */
  code: optionalTextField(20),
  layers: bedLayersField,
  ...batchFields,
  components,
});
