'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { answerSignal } from '@/lib/records/signal/answer-signal.command';
import { answerSignalInput } from '@/lib/records/signal/answer-signal.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function markSeenAction(data: FormData): Promise<void> {
  data.set('answer', 'seen');
  await runForm(answerSignalInput, answerSignal, data);
  redirect('/questions/watch?saved=answer' as Route);
}

export async function answerSignalAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(answerSignalInput, answerSignal, data);
  if (result.kind === 'ok') redirect('/questions/watch?saved=answer' as Route);
  return toFormState('watch', data, result);
}
