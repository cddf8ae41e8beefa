import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { comparisonReads } from './comparison-reads';
import { recordReads } from './record-reads';

/**
 * One page: its address, what it reads of the database, and the longest that may take at p95, in milliseconds. The count of
 * the reading lets a page be another one each time; those that do not count come with negative ones.
 */
export type PageRead = {
  readonly name: string;
  readonly address: (at: number) => string;
  readonly bar?: number;
  readonly read: (at: number) => Promise<unknown>;
  /** What happens before each reading, and is not timed. */
  readonly before?: () => Promise<void>;
};

const list = 100;

/** The pages whose time must not grow with the number of batches, for a coordinator. */
export async function pageReads(actor: Actor): Promise<PageRead[]> {
  const now = new Date();
  const filter = batchFilterInput.parse({});
  const first = await readAs(actor, (context) => listBatches(context, filter, now));
  const [batch] = first.batches;
  const listed = (name: string, query: Record<string, string>): PageRead => ({
    name,
    address: () => `/batches?${new URLSearchParams(query)}`,
    bar: list,
    read: () =>
      readAs(actor, async (context) => [
        await listBatches(context, batchFilterInput.parse(query), now),
        await listSiteNames(context, null),
        await listChoices(context),
      ]),
  });
  return [
    ...(await comparisonReads(actor, now)),
    listed('batches', {}),
    ...(first.older === undefined ? [] : [listed('batches, the next page', { after: first.older })]),
    listed('batches of five years ago', { to: '2021-11-01' }),
    {
      name: 'one batch',
      address: () => `/batches/${batch?.id}`,
      bar: list,
      read: () => readAs(actor, (context) => getBatch(context, batch?.id ?? '', now)),
    },
    ...(await recordReads(actor, now)),
  ];
}
