'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function startSecondLifeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(startSecondLifeInput, startSecondLife, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.id}?saved=yes` as Route);
  return toFormState('batches', data, result);
}
