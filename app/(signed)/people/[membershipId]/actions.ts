'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { changeMembership } from '@/lib/records/person/change-membership.command';
import { changeMembershipInput } from '@/lib/records/person/change-membership.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function changeMembershipAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeMembershipInput, changeMembership, data);
  if (result.kind === 'ok') redirect('/people');
  return toFormState('people', data, result);
}
