'use server';

import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { erasePerson } from '@/lib/records/person/erase-person.command';
import { erasePersonInput } from '@/lib/records/person/erase-person.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function erasePersonAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(erasePersonInput, erasePerson, data);
  if (result.kind === 'ok') redirect('/people');
  return toFormState('leaving', data, result);
}
