'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { takeBackTable } from '@/lib/intake/table/take-back';
import { takeBackInput } from '@/lib/intake/table/take-back.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function takeBackAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(takeBackInput, takeBackTable, data);
  if (result.kind === 'ok')
    redirect(`/import/${encodeURIComponent(String(data.get('id')))}?back=${result.value.records}` as Route);
  return toFormState('import', data, result);
}
