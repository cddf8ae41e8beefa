import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { writeNoticeInput } from './lot-notice.input';
import type { LotRef } from './lot-of';

/** Tells sites about a lot: what happened and what to do. Only the coordinator writes notices. */
export async function writeNotice(
  { db, actor, origin }: WriteContext,
  input: z.output<typeof writeNoticeInput>,
): Promise<Result<{ id: string } & LotRef>> {
  if (actor.role !== 'coordinator') return notFound;
  const { lotKind, lotId, whatHappened, whatToDo } = input;
  const id = input.id ?? newId();
  const written = ok({ id, lotKind, lotId });
  if (await db.lotNotice.findFirst({ where: { id, createdById: actor.personId } })) return written;
  const standing = { where: { id: lotId, voidedAt: null } };
  const lot =
    lotKind === 'spawn-lot' ? await db.spawnLot.count(standing) : await db.substrateLot.count(standing);
  if (lot === 0) return notFound;
  const siteIds = [...new Set(input.siteIds)];
  if (siteIds.length === 0) return invalid('siteIds', 'missing-choice');
  const known = await db.site.count({ where: { id: { in: siteIds }, voidedAt: null, leftAt: null } });
  if (known !== siteIds.length) return invalid('siteIds', 'not-an-option');
  const made = { networkId: actor.networkId, origin, createdById: actor.personId };
  await db.lotNotice.create({
    data: {
      ...{ ...made, id, whatHappened, whatToDo },
      ...(lotKind === 'spawn-lot' ? { spawnLotId: lotId } : { substrateLotId: lotId }),
    },
  });
  await db.lotNoticeSite.createMany({
    data: siteIds.map((siteId) => ({ ...made, id: newId(), noticeId: id, siteId })),
  });
  return written;
}
