'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { correctWeighing } from '@/lib/records/weighing/correct-weighing.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { correctWeighingInput, recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function recordWeighingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(recordWeighingInput, recordWeighing, data);
  if (result.kind === 'ok') redirect(`/weighings/${result.value.id}?saved=yes`);
  return toFormState('weighings', data, result);
}

export async function correctWeighingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctWeighingInput, correctWeighing, data);
  if (result.kind === 'ok') redirect(`/weighings/${result.value.id}`);
  return toFormState('weighings', data, result);
}
