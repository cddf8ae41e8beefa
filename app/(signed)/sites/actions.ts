'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addSite } from '@/lib/records/site/add-site.command';
import { correctSite } from '@/lib/records/site/correct-site.command';
import { addSiteInput, correctSiteInput } from '@/lib/records/site/site.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addSiteAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addSiteInput, addSite, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.id}`);
  return toFormState('sites', data, result);
}

export async function correctSiteAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctSiteInput, correctSite, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.id}`);
  return toFormState('sites', data, result);
}
