'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { changeMoney } from '@/lib/records/settings/change-money.command';
import { changeMoneyInput } from '@/lib/records/settings/money.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function changeMoneyAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(changeMoneyInput, changeMoney, data);
  if (result.kind === 'ok') redirect('/settings' as Route);
  return toFormState('programme.money', data, result);
}
