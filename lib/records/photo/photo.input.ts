import { z } from 'zod';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

/** Largest file that is taken, before it is made smaller. */
export const mostPhotoMegabytes = 10;
/** Enough to follow a batch; more belongs in an album. */
export const mostPhotosPerBatch = 40;

/** What a picture is of: a batch, or a finding of it. */
export const addPhotoInput = z.object({
  id: optionalIdField,
  batchId: idField,
  findingId: optionalIdField,
  caption: optionalTextField(200),
});
