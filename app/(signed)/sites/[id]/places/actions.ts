'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import {
  addConditionsInput,
  addPlaceInput,
  correctPlaceInput,
} from '@/lib/records/condition/condition.input';
import { correctPlace } from '@/lib/records/condition/correct-place.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addPlaceAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addPlaceInput, addPlace, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.siteId}/places/${result.value.id}` as Route);
  return toFormState('conditions', data, result);
}

export async function correctPlaceAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctPlaceInput, correctPlace, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.siteId}/places/${result.value.id}` as Route);
  return toFormState('conditions', data, result);
}

export async function addConditionsAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addConditionsInput, addConditions, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.siteId}/places/${result.value.placeId}` as Route);
  return toFormState('conditions', data, result);
}
