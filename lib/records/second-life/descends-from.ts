import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Whether `later` is a second life of `earlier`, or of one of its second lives, at whatever site. */
export async function descendsFrom({ db }: ReadContext, later: string, earlier: string): Promise<boolean> {
  const [row] = await db.$queryRaw<{ does: boolean }[]>`
    select app.descends_from(${later}::uuid, ${earlier}::uuid) as does`;
  return row?.does ?? false;
}
