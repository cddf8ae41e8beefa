import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { commandTaker } from '../command-taker';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import type { Taker, TakeSettings } from '../taker';
import { otherSite } from './other-batch';

/** What the form of a finding would have posted. */
export function rawFinding(values: RowValues): unknown {
  const { batch, stage, action, site: _, ...rest } = Object.fromEntries(values);
  // A notebook seldom says the stage or what was done: units found are taken to stand where they stood.
  return { batchId: batch, stage: stage ?? 'colonising', action: action ?? 'left_in_place', ...rest };
}

export async function findingKeys(
  { db, actor }: WriteContext,
  batchIds: readonly string[],
): Promise<KeyedRecord[]> {
  return await db.$queryRaw<KeyedRecord[]>`
    select concat_ws(' ', batch_id, found_on, units, sign) as key, id::text as id from public.finding
    where network_id = ${actor.networkId}::uuid and batch_id = any(${batchIds}::uuid[])`;
}

export function takeFindings(settings: TakeSettings): Taker {
  const batches = new Map<string, { code: string; siteId: string } | null>();
  const batchOf = async ({ db }: WriteContext, id: string) => {
    const before = batches.get(id);
    if (before !== undefined) return before;
    const batch = await db.batch.findFirst({ where: { id }, select: { code: true, siteId: true } });
    batches.set(id, batch);
    return batch;
  };
  return commandTaker(
    {
      schema: recordFindingInput,
      command: recordFinding,
      raw: rawFinding,
      contradictions: async (context, { batchId }, values) => {
        const batch = await batchOf(context, batchId);
        return batch ? otherSite(values, settings.siteId, batch) : [];
      },
      scopeOf: ({ batchId }) => batchId,
      keyOf: ({ batchId, foundOn, units, sign }) => [batchId, foundOn, units, sign].join(' '),
      readKeys: findingKeys,
    },
    settings,
  );
}
