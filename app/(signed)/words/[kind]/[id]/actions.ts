'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { takeOutNote } from '@/lib/records/words/take-out-note.command';
import { takeOutNoteInput } from '@/lib/records/words/take-out-note.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { ownPath } from '@/lib/ui/history/own-path';

export async function takeOutNoteAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(takeOutNoteInput, takeOutNote, data);
  if (result.kind === 'ok') redirect(ownPath(data.get('back')) as Route);
  return toFormState('common', data, result);
}
