import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** How many sites have left the network, by what became of their records. */
export type SitesLeft = { readonly counted: number; readonly withdrawn: number };

/** Told beside every sum of the network: sites that left and still count, and those whose records were taken out. */
export async function readSitesLeft({ db }: Pick<ReadContext, 'db'>): Promise<SitesLeft> {
  const [row] = await db.$queryRaw<{ counted: bigint; withdrawn: bigint }[]>`
    select counted, withdrawn from app.sites_left()`;
  return { counted: Number(row?.counted ?? 0), withdrawn: Number(row?.withdrawn ?? 0) };
}
