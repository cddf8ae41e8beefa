import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { withdrawNoticeInput } from './lot-notice.input';
import { type LotRef, lotOf } from './lot-of';

/** Takes a notice back, with the reason; who has read it stays written, and the lot's page tells both. */
export async function withdrawNotice(
  { db, actor, now }: WriteContext,
  { id, revision, reason }: z.output<typeof withdrawNoticeInput>,
): Promise<Result<LotRef>> {
  if (actor.role !== 'coordinator') return notFound;
  const notice = await db.lotNotice.findFirst({ where: { id } });
  if (!notice) return notFound;
  if (notice.voidedAt !== null) return ok(lotOf(notice));
  const { count } = await db.lotNotice.updateMany({
    where: { id, revision, voidedAt: null },
    data: { voidedAt: now, voidReason: reason },
  });
  return count === 1 ? ok(lotOf(notice)) : { kind: 'conflict', current: notice.revision };
}
