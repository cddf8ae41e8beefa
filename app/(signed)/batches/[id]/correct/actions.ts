'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { correctSecondLife } from '@/lib/records/second-life/correct-second-life.command';
import { correctSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function correctBatchAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctBatchInput, correctBatch, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.id}?saved=correction` as Route);
  return toFormState('batches', data, result);
}

export async function correctSecondLifeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctSecondLifeInput, correctSecondLife, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.id}?saved=correction` as Route);
  return toFormState('batches', data, result);
}
