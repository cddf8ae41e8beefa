'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function leaveSiteAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(leaveSiteInput, leaveSite, data);
  if (result.kind === 'ok') redirect('/sites');
  return toFormState('leaving', data, result);
}
