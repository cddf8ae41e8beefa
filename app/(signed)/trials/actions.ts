'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { assignSlot } from '@/lib/records/trial/assign-slot.command';
import { correctTrial } from '@/lib/records/trial/correct-trial.command';
import { endTrial } from '@/lib/records/trial/end-trial.command';
import { noteTrial } from '@/lib/records/trial/note-trial.command';
import { planTrial } from '@/lib/records/trial/plan-trial.command';
import { settleTrialSize } from '@/lib/records/trial/settle-trial-size.command';
import { assignSlotInput } from '@/lib/records/trial/slot.input';
import { startTrial } from '@/lib/records/trial/start-trial.command';
import {
  correctTrialInput,
  endTrialInput,
  noteTrialInput,
  planTrialInput,
  settleTrialSizeInput,
  startTrialInput,
} from '@/lib/records/trial/trial.input';
import { publishTrialResult } from '@/lib/report/trial/publish-trial-result.command';
import { showTrialResult } from '@/lib/report/trial/show-trial-result.command';
import { trialResultInput } from '@/lib/report/trial/trial-result.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function planTrialAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(planTrialInput, planTrial, data);
  if (result.kind === 'ok') redirect(`/trials/${result.value.id}` as Route);
  return toFormState('trials', data, result);
}

export async function correctTrialAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctTrialInput, correctTrial, data);
  if (result.kind === 'ok') redirect(`/trials/${result.value.id}` as Route);
  return toFormState('trials', data, result);
}

export async function noteTrialAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(noteTrialInput, noteTrial, data);
  if (result.kind === 'ok') redirect(`/trials/${result.value.id}` as Route);
  return toFormState('trials', data, result);
}

export async function endTrialAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(endTrialInput, endTrial, data);
  if (result.kind === 'ok') redirect(`/trials/${result.value.id}` as Route);
  return toFormState('trials', data, result);
}

export async function assignSlotAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(assignSlotInput, assignSlot, data);
  if (result.kind === 'ok') redirect(`/trials/${result.value.trialId}` as Route);
  return toFormState('trials', data, result);
}

/** Where the plan has changed meanwhile nothing is written, and its page shows it as it is now. */
export async function settleTrialSizeAction(data: FormData): Promise<void> {
  await runForm(settleTrialSizeInput, settleTrialSize, data);
  redirect(`/trials/${encodeURIComponent(String(data.get('id')))}` as Route);
}

export async function startTrialAction(data: FormData): Promise<void> {
  const result = await runForm(startTrialInput, startTrial, data);
  redirect((result.kind === 'ok' ? `/trials/${result.value.id}` : '/trials') as Route);
}

export async function publishTrialResultAction(data: FormData): Promise<void> {
  const result = await runForm(trialResultInput, publishTrialResult, data);
  redirect((result.kind === 'ok' ? `/trials/${result.value.id}/result` : '/trials') as Route);
}

export async function showTrialResultAction(data: FormData): Promise<void> {
  const result = await runForm(trialResultInput, showTrialResult, data);
  redirect((result.kind === 'ok' ? `/trials/${result.value.id}/result` : '/trials') as Route);
}
