import { z } from 'zod';
import { startBatchInput } from '../batch/start-batch.input';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField } from '../fields/text-field';

/** Which batch a run of the drawn list became, and what departed from the plan. Without a batch the run is free again. */
export const assignSlotInput = z.object({
  id: idField,
  revision: revisionField,
  batchId: optionalIdField,
  departure: optionalTextField(500),
  reason: optionalTextField(1000),
});

export const startTrialBatchInput = startBatchInput.extend({ trialSlotId: idField });
