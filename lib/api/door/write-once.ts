import 'server-only';
import { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { Told } from '../operation/operation';

const kept = z.object({
  status: z.union([z.literal(200), z.literal(201)]),
  body: z.unknown(),
  revision: z.number().optional(),
  location: z.string().optional(),
});

export type Once = Told & { readonly repeated: boolean };

/**
 * Writes under a key once: the write and its answer are saved in one transaction, the same request sent again gets its first
 * answer, and its key with other content is refused. A refusal leaves nothing, so that the key can be used again.
 */
export async function writeOnce(
  context: WriteContext,
  { tokenId, key, requestHash }: { tokenId: string; key: string; requestHash: string },
  write: () => Promise<Result<Told>>,
): Promise<Result<Once>> {
  const { db, actor, now } = context;
  const lock = `api ${tokenId} ${key}`;
  await db.$queryRaw`select 1 from pg_advisory_xact_lock(hashtextextended(${lock}, 0))`;
  const first = await db.apiReceipt.findFirst({ where: { tokenId, key } });
  if (first && first.requestHash !== requestHash) return invalid('', 'api-key-reused');
  if (first) {
    const { body, status, revision, location } = kept.parse(first.answer);
    return ok({
      ...{ status, body, repeated: true },
      ...(revision === undefined ? {} : { revision }),
      ...(location === undefined ? {} : { location }),
    });
  }
  const done = await write();
  if (done.kind !== 'ok') return done;
  const { status, body, revision, location } = done.value;
  await db.apiReceipt.createMany({
    data: {
      networkId: actor.networkId,
      personId: actor.personId,
      ...{ tokenId, key, requestHash, status, savedAt: now },
      answer: JSON.parse(JSON.stringify({ status, body, revision, location })),
    },
  });
  return ok({ ...done.value, repeated: false });
}
