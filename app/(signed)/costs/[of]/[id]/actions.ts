'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { noteCostInput, noteLotPriceInput } from '@/lib/records/cost/cost.input';
import { noteCost } from '@/lib/records/cost/note-cost.command';
import { noteLotPrice } from '@/lib/records/cost/note-lot-price.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { ownPath } from '@/lib/ui/history/own-path';

const folders: Readonly<Record<string, string>> = {
  batch: 'batches',
  'treatment-run': 'treatments',
  'substrate-lot': 'substrate-lots',
  'spawn-lot': 'spawn-lots',
};

/** The page of what the costs are about. */
function pageOf(data: FormData): Route {
  return ownPath(`/${folders[String(data.get('of'))] ?? ''}/${String(data.get('about'))}`) as Route;
}

export async function noteCostAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(noteCostInput, noteCost, data);
  if (result.kind === 'ok') redirect(pageOf(data));
  return toFormState('costs', data, result);
}

export async function noteLotPriceAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(noteLotPriceInput, noteLotPrice, data);
  if (result.kind === 'ok') redirect(pageOf(data));
  return toFormState('costs', data, result);
}
