'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addParticipant } from '@/lib/records/participant/add-participant.command';
import { correctParticipant } from '@/lib/records/participant/correct-participant.command';
import { eraseParticipant } from '@/lib/records/participant/erase-participant.command';
import {
  addParticipantInput,
  correctParticipantInput,
  eraseParticipantInput,
} from '@/lib/records/participant/participant.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addParticipantAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addParticipantInput, addParticipant, data);
  if (result.kind === 'ok') redirect(`/programme/participants/${result.value.id}?saved=yes` as Route);
  return toFormState('programme.participants', data, result);
}

export async function correctParticipantAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctParticipantInput, correctParticipant, data);
  if (result.kind === 'ok') redirect(`/programme/participants/${result.value.id}` as Route);
  return toFormState('programme.participants', data, result);
}

export async function eraseParticipantAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(eraseParticipantInput, eraseParticipant, data);
  if (result.kind === 'ok') redirect(`/programme/participants/${result.value.id}` as Route);
  return toFormState('programme.participants', data, result);
}
