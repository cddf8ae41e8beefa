import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFindings } from '@/lib/records/finding/record-findings';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import { setTaker } from '../set-taker';
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

type Place = { readonly code: string; readonly siteId: string };

export function takeFindings(settings: TakeSettings): Taker {
  const batches = new Map<string, Place | null>();
  const lookUp = async ({ db }: WriteContext, ids: readonly string[]) => {
    const unknown = [...new Set(ids)].filter((id) => !batches.has(id));
    if (unknown.length === 0) return;
    for (const id of unknown) batches.set(id, null);
    const found = await db.batch.findMany({
      where: { id: { in: unknown } },
      select: { id: true, code: true, siteId: true },
    });
    for (const { id, ...place } of found) batches.set(id, place);
  };
  return setTaker(
    recordFindingInput,
    {
      make: recordFindings,
      raw: rawFinding,
      contradictions: async (context, rows) => {
        await lookUp(
          context,
          rows.map(({ input }) => input.batchId),
        );
        return rows.map(({ input, values }) => {
          const batch = batches.get(input.batchId);
          return batch ? otherSite(values, settings.siteId, batch) : [];
        });
      },
      scopeOf: ({ batchId }) => batchId,
      keyOf: ({ batchId, foundOn, units, sign }) => [batchId, foundOn, units, sign].join(' '),
      readKeys: findingKeys,
    },
    settings,
  );
}
