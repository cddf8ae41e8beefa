'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { changeMaterial } from '@/lib/records/settings/change-material.command';
import { changeMethod } from '@/lib/records/settings/change-method.command';
import { changeSpecies } from '@/lib/records/settings/change-species.command';
import { changeWindow } from '@/lib/records/settings/change-window.command';
import {
  changeMaterialInput,
  changeMethodInput,
  changeSpeciesInput,
  changeWindowInput,
} from '@/lib/records/settings/settings.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function changeMethodAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeMethodInput, changeMethod, data);
  if (result.kind === 'ok') redirect('/settings');
  return toFormState('settings', data, result);
}

export async function changeMaterialAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeMaterialInput, changeMaterial, data);
  if (result.kind === 'ok') redirect('/settings');
  return toFormState('settings', data, result);
}

export async function changeSpeciesAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeSpeciesInput, changeSpecies, data);
  if (result.kind === 'ok') redirect('/settings');
  return toFormState('settings', data, result);
}

export async function changeWindowAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeWindowInput, changeWindow, data);
  if (result.kind === 'ok') redirect('/settings');
  return toFormState('settings', data, result);
}
