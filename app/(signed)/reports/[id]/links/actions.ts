'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { runForm } from '@/lib/access/run-command';
import { environment } from '@/lib/base/environment';
import { makeLinkInput, withdrawLinkInput } from '@/lib/report/link/link.input';
import { makeLink } from '@/lib/report/link/make-link.command';
import { withdrawLink } from '@/lib/report/link/withdraw-link.command';
import { emptyFormState, type FormState } from '@/lib/ui/form/field-spec';
import { postedValues } from '@/lib/ui/form/posted-values';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function makeLinkAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(makeLinkInput, makeLink, data);
  if (result.kind !== 'ok') return toFormState('links', data, result);
  const t = await getTranslations('links');
  const link = `${environment().NEXTAUTH_URL.replace(/\/$/, '')}/by-link/${result.value.token}`;
  // Only for whom the next one is has to be said anew.
  const values = { ...postedValues(data), forWhom: '' };
  return { ...emptyFormState, values, notice: t('made'), shownOnce: link };
}

export async function withdrawLinkAction(data: FormData): Promise<void> {
  const result = await runForm(withdrawLinkInput, withdrawLink, data);
  redirect((result.kind === 'ok' ? `/reports/${result.value.reportId}/links` : '/reports') as Route);
}
