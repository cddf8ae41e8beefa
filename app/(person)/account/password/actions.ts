'use server';

import { redirect } from 'next/navigation';
import { changePassword } from '@/lib/access/change-password';
import { changePasswordInput } from '@/lib/access/change-password.input';
import { requirePerson } from '@/lib/access/current';
import { parseInput } from '@/lib/access/parse-input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function changePasswordAction(_state: FormState, data: FormData): Promise<FormState> {
  const person = await requirePerson();
  const input = parseInput(changePasswordInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('access', data, input);
  const result = await changePassword(person, input.value.currentPassword, input.value.newPassword);
  if (result.kind !== 'ok') return toFormState('access', data, result);
  redirect('/account');
}
