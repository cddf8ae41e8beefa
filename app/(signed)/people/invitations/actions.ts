'use server';

import type { Route } from 'next';
import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { runForm } from '@/lib/access/run-command';
import { firstLinksInput } from '@/lib/records/person/first-links.input';
import { invitationInput } from '@/lib/records/person/invitation.input';
import { makeFirstLinks } from '@/lib/records/person/make-first-links.command';
import { renewInvitation } from '@/lib/records/person/renew-invitation.command';
import { withdrawInvitation } from '@/lib/records/person/withdraw-invitation.command';
import type { MadeLinks } from '@/lib/ui/people/new-link-form';
import { joinLink } from '../join-link';

export async function firstLinksAction(before: MadeLinks, data: FormData): Promise<MadeLinks> {
  const result = await runForm(firstLinksInput, makeFirstLinks, data);
  const t = await getTranslations('people');
  if (result.kind !== 'ok' || result.value.length === 0)
    return { made: before.made, refused: t('invitations.noneLeft') };
  // The list below the links then says that they were made.
  refresh();
  const unnamed = t('invitations.unnamed');
  return {
    made: [
      ...before.made,
      ...result.value.map(({ name, email, token }) => ({
        name: [name ?? unnamed, email].filter((part) => part !== null).join(' · '),
        link: joinLink(token),
      })),
    ],
  };
}

export async function renewInvitationAction(
  id: string,
  name: string,
  _state: MadeLinks,
  data: FormData,
): Promise<MadeLinks> {
  data.set('id', id);
  const result = await runForm(invitationInput, renewInvitation, data);
  const t = await getTranslations('people');
  if (result.kind !== 'ok') return { made: [], refused: t('invitations.gone') };
  return { made: [{ name, link: joinLink(result.value.token) }] };
}

export async function withdrawInvitationAction(id: string, data: FormData): Promise<void> {
  data.set('id', id);
  await runForm(invitationInput, withdrawInvitation, data);
  redirect('/people/invitations' as Route);
}
