'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { currentActor, requirePerson } from '@/lib/access/current';
import { leaveNetwork } from '@/lib/access/leave-network';
import { leaveNetworkInput } from '@/lib/access/leave-network.input';
import { parseInput } from '@/lib/access/parse-input';
import { dropSessionCookie } from '@/lib/access/session-cookie';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function leaveNetworkAction(_state: FormState, data: FormData): Promise<FormState> {
  const person = await requirePerson();
  const actor = await currentActor();
  const input = parseInput(leaveNetworkInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('leaving', data, input);
  const open = actor?.networkId ?? '';
  const result = await leaveNetwork(person, open, input.value.networkId);
  if (open === '' && result.kind === 'not-found') redirect('/networks');
  if (result.kind !== 'ok') return toFormState('leaving', data, result);
  await dropSessionCookie();
  redirect((result.value === 'gone' ? '/left?gone=1' : '/left') as Route);
}
