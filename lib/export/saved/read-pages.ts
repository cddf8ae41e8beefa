import type { ReadContext } from '@/lib/access/context';

const rowsPerPage = 1000;

/** Where a page begins, as the client's `findMany` takes it. */
export type PageStart = {
  readonly take: number;
  readonly skip?: number;
  readonly cursor?: { readonly networkId_id: { readonly networkId: string; readonly id: string } };
};

/** All rows of a question, a page at a time, each page after the last row of the one before. */
export async function* readPages<R extends { readonly id: string }>(
  { actor }: ReadContext,
  ask: (start: PageStart) => Promise<readonly R[]>,
): AsyncGenerator<readonly R[]> {
  let start: PageStart = { take: rowsPerPage };
  for (;;) {
    const rows = await ask(start);
    if (rows.length > 0) yield rows;
    const last = rows.at(-1);
    if (rows.length < rowsPerPage || !last) return;
    const cursor = { networkId_id: { networkId: actor.networkId, id: last.id } };
    start = { take: rowsPerPage, skip: 1, cursor };
  }
}
