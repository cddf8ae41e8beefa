import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Whether the actor wants the week's signals of the open network by e-mail; undefined until they have chosen. */
export async function getDigestChoice({ db, actor }: ReadContext): Promise<boolean | undefined> {
  const choice = await db.digestChoice.findFirst({
    where: { networkId: actor.networkId, personId: actor.personId, voidedAt: null },
  });
  return choice?.wanted;
}
