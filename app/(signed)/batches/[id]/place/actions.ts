'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { placeBatchInput } from '@/lib/records/condition/condition.input';
import { placeBatch } from '@/lib/records/condition/place-batch.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function placeBatchAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(placeBatchInput, placeBatch, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.batchId}`);
  return toFormState('conditions', data, result);
}
