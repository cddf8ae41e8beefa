import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { erasePersonInput } from './erase-person.input';

/** Erases a person who asked for it, in this network; their records stay. A coordinator leaves by their own account. */
export async function erasePerson(
  { db, actor }: WriteContext,
  { id, reason }: z.output<typeof erasePersonInput>,
): Promise<Result<{ left: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const membership = await db.membership.findFirst({
    where: { id, networkId: actor.networkId, voidedAt: null, erasedAt: null },
    include: { person: { include: { contact: true } } },
  });
  if (!membership || membership.personId === actor.personId) return notFound;
  const { contact } = membership.person;
  const said = reason.toLowerCase();
  if (contact && [contact.name, contact.email].some((word) => said.includes(word.toLowerCase())))
    return invalid('reason', 'names-the-person');
  const [row] = await db.$queryRaw<{ left: string | null }[]>`
    select app.erase_person(${membership.personId}::uuid) as "left"`;
  return row?.left ? ok({ left: row.left }) : notFound;
}
