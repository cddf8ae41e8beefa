'use server';

import { redirect } from 'next/navigation';
import { changePreferences } from '@/lib/access/change-preferences';
import { requirePerson } from '@/lib/access/current';
import { parseInput } from '@/lib/access/parse-input';
import { preferencesInput } from '@/lib/access/preferences.input';
import { dropSessionCookie } from '@/lib/access/session-cookie';
import { signOut } from '@/lib/access/sign-out';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function changePreferencesAction(_state: FormState, data: FormData): Promise<FormState> {
  const person = await requirePerson();
  const input = parseInput(preferencesInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('access', data, input);
  await changePreferences(person, input.value);
  redirect('/account');
}

export async function signOutAction(data: FormData): Promise<void> {
  const person = await requirePerson();
  await signOut(person, data.get('reach') === 'all-sessions' ? 'all-sessions' : 'this-session');
  await dropSessionCookie();
  redirect('/sign-in');
}
