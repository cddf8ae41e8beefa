'use server';

import type { Route } from 'next';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { nextPath } from '@/lib/access/next-path';
import { parseInput } from '@/lib/access/parse-input';
import { setSessionCookie } from '@/lib/access/session-cookie';
import { signIn } from '@/lib/access/sign-in';
import { signInInput } from '@/lib/access/sign-in.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function signInAction(_state: FormState, data: FormData): Promise<FormState> {
  const input = parseInput(signInInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('access', data, input);
  const device = (await headers()).get('user-agent') ?? undefined;
  const result = await signIn(input.value.email, input.value.password, device);
  if (result.kind !== 'ok') return toFormState('access', data, result);
  await setSessionCookie(result.value.sessionId);
  redirect((nextPath(data.get('next')) ?? '/') as Route);
}
