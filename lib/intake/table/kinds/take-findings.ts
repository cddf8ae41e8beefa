import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFindings } from '@/lib/records/finding/record-findings';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import { setTaker } from '../set-taker';
import type { Taker, TakeSettings } from '../taker';
import { otherSite } from './other-batch';
import { askUnsaid, assumedNote, type UnsaidFacts } from './unsaid-facts';

/** What the form of a finding would have posted. */
export function rawFinding(values: RowValues): unknown {
  const { batch, site: _, ...rest } = Object.fromEntries(values);
  return { batchId: batch, ...rest };
}

/** A list of findings seldom says the stage or what was done. */
function unsaidOf(values: RowValues): UnsaidFacts {
  return {
    stage: values.has('stage') ? undefined : 'colonising',
    action: values.has('action') ? undefined : 'left_in_place',
  };
}

/** What the form would have posted for a row, with what the row does not say and a note of it. */
function rawRow(values: RowValues, language: string): unknown {
  const facts = unsaidOf(values);
  const notes = [values.get('note'), assumedNote(facts, language)].filter((one) => one !== undefined);
  const { stage, action } = facts;
  const whole = new Map<string, unknown>([...Object.entries({ stage, action }), ...values]);
  return rawFinding(notes.length === 0 ? whole : whole.set('note', notes.join(' ')));
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
      raw: (values, _settings, { actor }) => rawRow(values, actor.language),
      asks: (values) => askUnsaid(unsaidOf(values)),
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
