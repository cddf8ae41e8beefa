'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { correctPractice } from '@/lib/records/practice/correct-practice.command';
import { correctPracticeInput, recordPracticeInput } from '@/lib/records/practice/practice.input';
import { recordPractice } from '@/lib/records/practice/record-practice.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function recordPracticeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(recordPracticeInput, recordPractice, data);
  if (result.kind === 'ok') redirect(`/programme/practices/${result.value.id}?saved=yes` as Route);
  return toFormState('programme.practices', data, result);
}

export async function correctPracticeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctPracticeInput, correctPractice, data);
  if (result.kind === 'ok') redirect(`/programme/practices/${result.value.id}` as Route);
  return toFormState('programme.practices', data, result);
}
