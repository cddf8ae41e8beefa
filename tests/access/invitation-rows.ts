import { z } from 'zod';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { firstLinksInput } from '@/lib/records/person/first-links.input';
import { getInvitation } from '@/lib/records/person/get-invitation.query';
import { invitationInput } from '@/lib/records/person/invitation.input';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { makeFirstLinks } from '@/lib/records/person/make-first-links.command';
import { renewInvitation } from '@/lib/records/person/renew-invitation.command';
import { withdrawInvitation } from '@/lib/records/person/withdraw-invitation.command';
import { command, type OperationRow, query } from './operation-rows';
import { now, type World } from './world';

/** An open invitation to Mill Lane, as one that came from a table. */
async function open({ people }: World): Promise<{ id: string }> {
  const raw = { role: 'member', siteIds: [people.millLane] };
  const made = await runAs(people.coordinator, invitePersonInput, invitePerson, raw, {
    ...{ origin: 'file_import', now },
  });
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  return { id: made.value.id };
}

/** Who is invited is the business of the network's coordinators. */
export const invitationRows: readonly OperationRow[] = [
  {
    ...command(
      'records/person/renew-invitation.command',
      'y----',
      invitationInput,
      renewInvitation,
      () => null,
    ),
    prepare: open,
  },
  {
    ...command(
      'records/person/withdraw-invitation.command',
      'y----',
      invitationInput,
      withdrawInvitation,
      () => null,
    ),
    prepare: open,
  },
  {
    ...command(
      'records/person/make-first-links.command',
      'y---o',
      firstLinksInput,
      makeFirstLinks,
      () => ({}),
    ),
    prepare: async (world) => {
      await open(world);
      return {};
    },
  },
  {
    ...query(
      'records/person/list-invitations.query',
      'y----',
      (c) => listInvitations(c, null, now),
      ({ invitations }) => invitations.some(({ siteNames }) => siteNames.includes('Mill Lane Garden')),
    ),
    prepare: open,
  },
  {
    file: 'records/person/get-invitation.query',
    may: 'y----',
    prepare: open,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) =>
        getInvitation(context, z.object({ id: z.string() }).parse(prepared).id, now),
      )) !== undefined,
  },
];
