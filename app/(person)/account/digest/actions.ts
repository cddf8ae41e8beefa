'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { chooseDigest } from '@/lib/records/signal/choose-digest.command';
import { chooseDigestInput } from '@/lib/records/signal/choose-digest.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function chooseDigestAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(chooseDigestInput, chooseDigest, data);
  if (result.kind === 'ok') redirect('/account/digest?saved=choice' as Route);
  return toFormState('watch', data, result);
}
