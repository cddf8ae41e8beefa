'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { addLabelSheet } from '@/lib/records/label/add-label-sheet.command';
import { correctLabelSheet } from '@/lib/records/label/correct-label-sheet.command';
import { addLabelSheetInput, correctLabelSheetInput } from '@/lib/records/label/label-sheet.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function addLabelSheetAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(addLabelSheetInput, addLabelSheet, data);
  if (result.kind === 'ok') redirect('/labels/sheets' as Route);
  return toFormState('labels', data, result);
}

export async function correctLabelSheetAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(correctLabelSheetInput, correctLabelSheet, data);
  if (result.kind === 'ok') redirect('/labels/sheets' as Route);
  return toFormState('labels', data, result);
}
