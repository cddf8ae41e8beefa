'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { agreeSharing } from '@/lib/records/sharing/agree-sharing.command';
import { agreeSharingInput } from '@/lib/records/sharing/agree-sharing.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function agreeSharingAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(agreeSharingInput, agreeSharing, data);
  if (result.kind === 'ok') redirect(`/sites/${result.value.id}/sharing?saved=1` as Route);
  return toFormState('sharing', data, result);
}
