import 'server-only';
import type { ReadContext } from '@/lib/access/context';

const mostChoices = 500;

/** Participants to choose from in a form, by name: those added last when there are more than a form can hold. */
export async function listParticipantChoices({
  db,
}: ReadContext): Promise<{ id: string; name: string; siteName: string }[]> {
  const rows = await db.participant.findMany({
    where: { voidedAt: null, erasedAt: null, contact: { is: { name: { not: null } } } },
    select: { id: true, contact: { select: { name: true } }, site: { select: { name: true } } },
    orderBy: { id: 'desc' },
    take: mostChoices,
  });
  return rows
    .map(({ id, contact, site }) => ({ id, name: contact?.name ?? '', siteName: site.name }))
    .sort((a, b) => a.name.localeCompare(b.name));
}
