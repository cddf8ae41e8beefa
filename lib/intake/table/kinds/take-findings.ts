import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { commandTaker } from '../command-taker';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import type { Taker, TakeSettings } from '../taker';

/** What the form of a finding would have posted. */
export function rawFinding(values: RowValues): unknown {
  const { batch, stage, action, ...rest } = Object.fromEntries(values);
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
  return commandTaker(
    {
      schema: recordFindingInput,
      command: recordFinding,
      raw: rawFinding,
      scopeOf: ({ batchId }) => batchId,
      keyOf: ({ batchId, foundOn, units, sign }) => [batchId, foundOn, units, sign].join(' '),
      readKeys: findingKeys,
    },
    settings,
  );
}
