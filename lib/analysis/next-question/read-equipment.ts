import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { grouped } from '../programme/grouped';

/** What a site can use: what was said there, otherwise what it has used; everything where nothing is known. */
export type Equipment = {
  readonly usable: readonly string[];
  /** It has used nothing and nobody has said anything, so all methods are taken. */
  readonly unsaid: boolean;
};

/** Of each site, or of the one asked for. @param methods ids of all methods of the network, in the order wanted. */
export async function readEquipment(
  { db, actor }: ReadContext,
  methods: readonly string[],
  siteId?: string,
): Promise<(siteId: string) => Equipment> {
  const site = siteId ?? null;
  const said = grouped(
    await db.siteMethod.findMany({ where: siteId === undefined ? {} : { siteId } }),
    (row) => row.siteId,
  );
  const used = await db.$queryRaw<{ siteId: string; methodId: string }[]>`
    select distinct site_id::text as "siteId", method_id::text as "methodId" from batch
    where network_id = ${actor.networkId}::uuid and voided_at is null and method_id is not null
      and (${site}::uuid is null or site_id = ${site}::uuid)`;
  const usedAt = grouped(used, (row) => row.siteId);
  return (id) => {
    const known = new Set((usedAt.get(id) ?? []).map(({ methodId }) => methodId));
    const answers = new Map((said.get(id) ?? []).map((row) => [row.methodId, row.available]));
    const unsaid = known.size === 0 && answers.size === 0;
    return { unsaid, usable: methods.filter((one) => unsaid || (answers.get(one) ?? known.has(one))) };
  };
}
