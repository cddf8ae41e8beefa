'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { correctSpawnLot } from '@/lib/records/spawn-lot/correct-spawn-lot.command';
import { receiveSpawn } from '@/lib/records/spawn-lot/receive-spawn.command';
import {
  addSpawnLotInput,
  correctSpawnLotInput,
  receiveSpawnInput,
} from '@/lib/records/spawn-lot/spawn-lot.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addSpawnLotAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addSpawnLotInput, addSpawnLot, data);
  if (result.kind === 'ok') redirect(`/spawn-lots/${result.value.id}`);
  return toFormState('lots', data, result);
}

export async function correctSpawnLotAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctSpawnLotInput, correctSpawnLot, data);
  if (result.kind === 'ok') redirect(`/spawn-lots/${result.value.id}`);
  return toFormState('lots', data, result);
}

export async function receiveSpawnAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(receiveSpawnInput, receiveSpawn, data);
  if (result.kind === 'ok') redirect(`/spawn-lots/${result.value.spawnLotId}`);
  return toFormState('lots', data, result);
}
