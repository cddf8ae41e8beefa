'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { currentLanguage } from '@/lib/access/current-language';
import { setupInput } from '@/lib/access/join.input';
import { parseInput } from '@/lib/access/parse-input';
import { runAs } from '@/lib/access/run-command';
import { setSessionCookie } from '@/lib/access/session-cookie';
import { lookUpSession } from '@/lib/access/session-lookup';
import { takeSetupLink } from '@/lib/access/setup-link';
import { openSession } from '@/lib/access/sign-in';
import { addDefaults } from '@/lib/records/network/add-defaults.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function startNetworkAction(
  token: string,
  _state: FormState,
  data: FormData,
): Promise<FormState> {
  const input = parseInput(setupInput, Object.fromEntries(data));
  if (input.kind !== 'ok') return toFormState('access', data, input);
  const { region } = await currentLanguage();
  const made = await takeSetupLink(token, { ...input.value, region });
  if (made.kind !== 'ok') return toFormState('access', data, made);
  const sessionId = await openSession(made.value.personId);
  const signed = await lookUpSession(sessionId);
  if (signed?.actor) await runAs(signed.actor, z.object({}), addDefaults, {});
  await setSessionCookie(sessionId);
  redirect('/');
}
