'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addSuitability } from '@/lib/records/settings/add-suitability.command';
import { changeSuitability } from '@/lib/records/settings/change-suitability.command';
import { addSuitabilityInput, changeSuitabilityInput } from '@/lib/records/settings/settings.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

const pageOf = (speciesId: string | null) =>
  `/settings/suitability${speciesId === null ? '' : `?species=${speciesId}`}` as Route;

export async function changeSuitabilityAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeSuitabilityInput, changeSuitability, data);
  if (result.kind === 'ok') redirect(pageOf(result.value.speciesId));
  return toFormState('settings', data, result);
}

export async function addSuitabilityAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addSuitabilityInput, addSuitability, data);
  if (result.kind === 'ok') redirect(pageOf(result.value.speciesId));
  return toFormState('settings', data, result);
}
