import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { Failure } from '@/lib/base/result';

/** Asks whether somebody of the same name at the same site is really another person: each is counted once. */
export async function askSameName(
  { db, confirmed }: WriteContext,
  { id, siteId, name }: { readonly id: string; readonly siteId: string; readonly name: string },
): Promise<Failure | undefined> {
  if (confirmed.has('same-name')) return undefined;
  const other = await db.participantContact.findFirst({
    where: {
      siteId,
      id: { not: id },
      name: { equals: name, mode: 'insensitive' },
      participant: { voidedAt: null },
    },
  });
  return other === null
    ? undefined
    : { kind: 'confirm', questions: [{ field: 'name', code: 'same-name', values: { name } }] };
}
