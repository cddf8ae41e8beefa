'use server';

import { redirect } from 'next/navigation';
import { currentSigned } from '@/lib/access/current';
import { joinAsKnown, joinAsNew } from '@/lib/access/join';
import { joinInput } from '@/lib/access/join.input';
import { openNetwork } from '@/lib/access/open-network';
import { parseInput } from '@/lib/access/parse-input';
import { setSessionCookie } from '@/lib/access/session-cookie';
import { openSession } from '@/lib/access/sign-in';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function joinAction(token: string, _state: FormState, data: FormData): Promise<FormState> {
  const signed = await currentSigned();
  if (signed) {
    const joined = await joinAsKnown(token, signed.person);
    if (joined.kind !== 'ok') return toFormState('access', data, joined);
    await openNetwork(signed.person, joined.value.networkId);
    redirect('/');
  }
  const input = parseInput(joinInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('access', data, input);
  const joined = await joinAsNew(token, input.value);
  if (joined.kind !== 'ok') return toFormState('access', data, joined);
  await setSessionCookie(await openSession(joined.value.personId));
  redirect('/');
}
