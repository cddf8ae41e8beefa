'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { allocateTreatment } from '@/lib/records/treatment/allocate-treatment.command';
import { correctTreatment } from '@/lib/records/treatment/correct-treatment.command';
import { endTreatment } from '@/lib/records/treatment/end-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import {
  addReadingInput,
  allocateTreatmentInput,
  correctTreatmentInput,
  endTreatmentInput,
  startTreatmentInput,
} from '@/lib/records/treatment/treatment.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { workedOut } from '@/lib/ui/form/worked-out';

export async function startTreatmentAction(_state: FormState, data: FormData): Promise<FormState> {
  const sums = await workedOut(data);
  if (sums !== undefined) return sums;
  const result = await runForm(startTreatmentInput, startTreatment, data);
  if (result.kind === 'ok') redirect(`/treatments/${result.value.id}`);
  return toFormState('treatments', data, result);
}

export async function correctTreatmentAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctTreatmentInput, correctTreatment, data);
  if (result.kind === 'ok') redirect(`/treatments/${result.value.id}`);
  return toFormState('treatments', data, result);
}

export async function addReadingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addReadingInput, addReading, data);
  if (result.kind === 'ok') redirect(`/treatments/${result.value.treatmentRunId}`);
  return toFormState('treatments', data, result);
}

export async function endTreatmentAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(endTreatmentInput, endTreatment, data);
  if (result.kind === 'ok') redirect(`/treatments/${result.value.id}`);
  return toFormState('treatments', data, result);
}

export async function allocateTreatmentAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(allocateTreatmentInput, allocateTreatment, data);
  if (result.kind === 'ok') redirect(`/treatments/${result.value.treatmentRunId}`);
  return toFormState('treatments', data, result);
}
