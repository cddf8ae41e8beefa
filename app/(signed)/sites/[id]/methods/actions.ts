'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { chooseSiteMethods } from '@/lib/records/site-method/choose-site-methods.command';
import { chooseSiteMethodsInput } from '@/lib/records/site-method/choose-site-methods.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function chooseSiteMethodsAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(chooseSiteMethodsInput, chooseSiteMethods, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.id}`);
  return toFormState('sites', data, result);
}
