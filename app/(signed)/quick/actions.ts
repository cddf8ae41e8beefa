'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import type { Result } from '@/lib/base/result';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { asCheckField, asLookForm } from '@/lib/ui/quick/check-form';

/** Without script: back to the same page, which says that it was saved, or to the form with what is wrong. */
async function answer(
  page: 'harvest' | 'contamination' | 'check',
  kind: 'weighing' | 'finding' | 'check' | 'look',
  result: Result<{ id: string; batchId: string }>,
  data: FormData,
): Promise<FormState> {
  if (result.kind === 'ok') {
    const { id, batchId } = result.value;
    redirect(`/quick/${page}?saved=${kind}&record=${id}&batch=${batchId}` as Route);
  }
  return toFormState('quick', data, result);
}

export async function quickHarvestAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer('harvest', 'weighing', await runForm(recordWeighingInput, recordWeighing, data), data);
}

export async function quickContaminationAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer('contamination', 'finding', await runForm(recordFindingInput, recordFinding, data), data);
}

export async function quickCheckAction(_state: FormState, data: FormData): Promise<FormState> {
  if (data.get('kind') !== 'all_clean')
    return answer('check', 'check', await runForm(recordCheckInput, recordCheck, data), data);
  const result = await runForm(recordLookInput, recordLook, asLookForm(data));
  const state = await answer('check', 'look', result, data);
  return {
    ...state,
    errors: state.errors.map(({ field, text }) => ({ field: asCheckField(field), text })),
  };
}
