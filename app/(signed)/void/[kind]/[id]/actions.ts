'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { ownPath } from '@/lib/ui/history/own-path';

export async function voidRecordAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(voidRecordInput, voidRecord, data);
  if (result.kind === 'ok') redirect(ownPath(data.get('back')) as Route);
  return toFormState('common', data, result);
}
