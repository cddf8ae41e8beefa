'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';
import { takeBack } from '@/lib/intake/table/take-back';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function takeBackAction(_state: FormState, data: FormData): Promise<FormState> {
  const actor = await requireActor('coordinator', 'member');
  const id = String(data.get('id') ?? '');
  const result = await takeBack(actor, { id, reason: data.get('reason') });
  if (result.kind === 'ok')
    redirect(`/import/${encodeURIComponent(id)}?back=${result.value.records}` as Route);
  return toFormState('import', data, result);
}
