'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addSubstrateLot } from '@/lib/records/substrate-lot/add-substrate-lot.command';
import { correctSubstrateLot } from '@/lib/records/substrate-lot/correct-substrate-lot.command';
import { receiveSubstrate } from '@/lib/records/substrate-lot/receive-substrate.command';
import {
  addSubstrateLotInput,
  correctSubstrateLotInput,
  receiveSubstrateInput,
} from '@/lib/records/substrate-lot/substrate-lot.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addSubstrateLotAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addSubstrateLotInput, addSubstrateLot, data);
  if (result.kind === 'ok') redirect(`/substrate-lots/${result.value.id}`);
  return toFormState('lots', data, result);
}

export async function correctSubstrateLotAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctSubstrateLotInput, correctSubstrateLot, data);
  if (result.kind === 'ok') redirect(`/substrate-lots/${result.value.id}`);
  return toFormState('lots', data, result);
}

export async function receiveSubstrateAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(receiveSubstrateInput, receiveSubstrate, data);
  if (result.kind === 'ok') redirect(`/substrate-lots/${result.value.substrateLotId}`);
  return toFormState('lots', data, result);
}
