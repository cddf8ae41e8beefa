'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { runForm } from '@/lib/access/run-command';
import { makeToken } from '@/lib/records/token/make-token.command';
import { makeTokenInput, withdrawTokenInput } from '@/lib/records/token/token.input';
import { withdrawToken } from '@/lib/records/token/withdraw-token.command';
import { emptyFormState, type FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function makeTokenAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(makeTokenInput, makeToken, data);
  if (result.kind !== 'ok') return toFormState('api', data, result);
  const t = await getTranslations('api.make');
  const shown = { notice: t('made'), shownOnce: result.value.secret };
  return { ...emptyFormState, values: { scope: 'read' }, ...shown };
}

export async function withdrawTokenAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(withdrawTokenInput, withdrawToken, data);
  if (result.kind === 'ok') redirect('/account/tokens?saved=withdrawn' as Route);
  return toFormState('api', data, result);
}
