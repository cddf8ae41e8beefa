import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { recordReads } from './record-reads';

/** One page: its address, what it reads of the database, and the longest that may take at p95, in milliseconds. */
export type PageRead = {
  readonly name: string;
  readonly address: string;
  readonly bar: number;
  readonly read: () => Promise<unknown>;
};

const [comparison, list] = [300, 100];

/** The pages whose time must not grow with the number of batches, for a coordinator. */
export async function pageReads(actor: Actor): Promise<PageRead[]> {
  const now = new Date();
  const filter = batchFilterInput.parse({});
  const first = await readAs(actor, (context) => listBatches(context, filter, now));
  const [batch] = first.batches;
  const compared = (name: string, query: Record<string, string>): PageRead => ({
    name,
    address: `/comparison?${new URLSearchParams(query)}`,
    bar: comparison,
    read: () => readAs(actor, (context) => readComparisonPage(context, query, now)),
  });
  const listed = (name: string, query: Record<string, string>): PageRead => ({
    name,
    address: `/batches?${new URLSearchParams(query)}`,
    bar: list,
    read: () =>
      readAs(actor, async (context) => [
        await listBatches(context, batchFilterInput.parse(query), now),
        await listSites(context),
        await listChoices(context),
      ]),
  });
  return [
    compared('comparison, as it opens', {}),
    compared('comparison, its second page', { page: '2' }),
    compared('comparison, all years and species', { from: '2000-01-01', to: '2100-01-01', species: 'all' }),
    compared('comparison, odd days of five years', { from: '2021-02-11', to: '2026-05-20' }),
    {
      name: 'batches behind a figure',
      address: '/comparison/rows',
      bar: comparison,
      read: () => readAs(actor, (context) => readRowsBehind(context, {}, now)),
    },
    listed('batches', {}),
    ...(first.older === undefined ? [] : [listed('batches, the next page', { after: first.older })]),
    listed('batches of five years ago', { to: '2021-11-01' }),
    {
      name: 'one batch',
      address: `/batches/${batch?.id}`,
      bar: list,
      read: () => readAs(actor, (context) => getBatch(context, batch?.id ?? '', now)),
    },
    ...(await recordReads(actor, now)),
  ];
}
