'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { reopenBatch } from '@/lib/records/batch/reopen-batch.command';
import { reopenBatchInput } from '@/lib/records/batch/reopen-batch.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function closeBatchAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(closeBatchInput, closeBatch, data);
  if (result.kind === 'ok') redirect(`/batches/${String(data.get('batchId'))}` as Route);
  return toFormState('batches', data, result);
}

export async function reopenBatchAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(reopenBatchInput, reopenBatch, data);
  if (result.kind === 'ok') redirect(`/batches/${String(data.get('id'))}` as Route);
  return toFormState('batches', data, result);
}
