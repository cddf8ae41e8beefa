import 'server-only';
import { getLocale, getMessages } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { isId } from '@/lib/records/fields/id-field';
import { listOpenBatches } from '@/lib/records/shed/list-open-batches.query';
import type { QuickProps } from '@/lib/ui/quick/quick-props';
import { quickWordsOf } from '@/lib/ui/quick/quick-words';

type Query = Promise<Record<string, string | string[] | undefined>>;

/** What was saved just before without script, as the address says. */
export type SavedHere = { readonly kind: string; readonly record: string; readonly batchId: string };

function idIn(text: string | string[] | undefined): string | undefined {
  return typeof text === 'string' && isId(text) ? text.toLowerCase() : undefined;
}

/** What a quick entry's page hands to its form, and what the address says was saved. */
export async function loadQuick(
  searchParams: Query,
): Promise<{ props: QuickProps; networkId: string; saved?: SavedHere }> {
  const query = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const batches = await readAs(actor, listOpenBatches);
  const batchId = idIn(query.batch);
  const record = idIn(query.record);
  const { personId: id, name, language, region, massUnit, temperatureUnit } = actor;
  return {
    networkId: actor.networkId,
    props: {
      snapshot: { person: { id, name, language, region, massUnit, temperatureUnit }, batches, due: [] },
      words: quickWordsOf(await getMessages(), await getLocale()),
      now: new Date().toISOString(),
      firstId: newId(),
      ...(batchId === undefined ? {} : { batchId }),
    },
    ...(typeof query.saved === 'string' && record !== undefined && batchId !== undefined
      ? { saved: { kind: query.saved, record, batchId } }
      : {}),
  };
}
