'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { correctSale } from '@/lib/records/sale/correct-sale.command';
import { recordSale } from '@/lib/records/sale/record-sale.command';
import { correctSaleInput, recordSaleInput } from '@/lib/records/sale/sale.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function recordSaleAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(recordSaleInput, recordSale, data);
  if (result.kind === 'ok') redirect(`/programme/sales/${result.value.id}?saved=yes` as Route);
  return toFormState('programme.sales', data, result);
}

export async function correctSaleAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctSaleInput, correctSale, data);
  if (result.kind === 'ok') redirect(`/programme/sales/${result.value.id}` as Route);
  return toFormState('programme.sales', data, result);
}
