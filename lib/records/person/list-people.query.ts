import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { MembershipRole } from '@/lib/database/generated/enums';

export type PersonView = {
  readonly membershipId: string;
  readonly revision: number;
  readonly personId: string;
  readonly name: string;
  readonly email: string;
  readonly role: MembershipRole;
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  readonly ended: boolean;
  readonly disabled: boolean;
};

/** Everybody in the network, by name and last those whose name is erased, for the coordinator; nobody for others. */
export async function listPeople({ db, actor }: ReadContext): Promise<PersonView[]> {
  if (actor.role !== 'coordinator') return [];
  const rows = await db.membership.findMany({
    where: { voidedAt: null, networkId: actor.networkId },
    include: {
      person: { include: { contact: true } },
      sites: { where: { endedAt: null }, include: { site: true } },
    },
  });
  return rows
    .map((row) => ({
      membershipId: row.id,
      revision: row.revision,
      personId: row.personId,
      name: row.person.contact?.name ?? '',
      email: row.person.contact?.email ?? '',
      role: row.role,
      sites: row.sites.map(({ site }) => ({ id: site.id, name: site.name })),
      ended: row.endedAt !== null,
      disabled: row.person.disabledAt !== null,
    }))
    .sort((a, b) => Number(a.name === '') - Number(b.name === '') || a.name.localeCompare(b.name));
}
