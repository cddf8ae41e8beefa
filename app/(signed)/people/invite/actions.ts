'use server';

import { getTranslations } from 'next-intl/server';
import { runForm } from '@/lib/access/run-command';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { emptyFormState, type FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { joinLink } from '../join-link';

export async function invitePersonAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(invitePersonInput, invitePerson, data);
  if (result.kind !== 'ok') return toFormState('people', data, result);
  const t = await getTranslations('people');
  const shown = { notice: t('linkMade'), shownOnce: joinLink(result.value.token) };
  return { ...emptyFormState, values: { role: 'member' }, ...shown };
}
