'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addBedLayers } from '@/lib/records/bed-layer/add-bed-layers.command';
import { addBedLayersInput } from '@/lib/records/bed-layer/bed-layer.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addBedLayersAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addBedLayersInput, addBedLayers, data);
  if (result.kind === 'ok') redirect(`/batches/${result.value.batchId}?saved=layers` as Route);
  return toFormState('batches', data, result);
}
