'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { workedOut } from '@/lib/ui/form/worked-out';

export async function startBatchAction(_state: FormState, data: FormData): Promise<FormState> {
  const sums = await workedOut(data);
  if (sums !== undefined) return sums;
  const result = data.has('trialSlotId')
    ? await runForm(startTrialBatchInput, startTrialBatch, data)
    : await runForm(startBatchInput, startBatch, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.id}?saved=yes` as Route);
  return toFormState('batches', data, result);
}
