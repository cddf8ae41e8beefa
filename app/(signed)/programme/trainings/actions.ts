'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { correctTraining } from '@/lib/records/training/correct-training.command';
import { recordTraining } from '@/lib/records/training/record-training.command';
import { correctTrainingInput, recordTrainingInput } from '@/lib/records/training/training.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function recordTrainingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(recordTrainingInput, recordTraining, data);
  if (result.kind === 'ok') redirect(`/programme/trainings/${result.value.id}?saved=yes` as Route);
  return toFormState('programme.trainings', data, result);
}

export async function correctTrainingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctTrainingInput, correctTraining, data);
  if (result.kind === 'ok') redirect(`/programme/trainings/${result.value.id}` as Route);
  return toFormState('programme.trainings', data, result);
}
