import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { PracticeKind } from '@/lib/growing/programme-vocabulary';
import type { Period } from '../production/read-production';
import { grouped } from './grouped';

export type PracticeInPeriod = {
  readonly practice: PracticeKind;
  /** Sites that took it up within the period. */
  readonly adoptedAt: readonly string[];
  /** Sites where it stands on the last day of the period, whenever it was taken up. */
  readonly standingAt: readonly string[];
  /** Growers counted in the records of those that took it up in the period, and how many records did not say. */
  readonly growers: number;
  readonly withoutGrowers: number;
};

type Row = {
  readonly practice: PracticeKind;
  readonly siteId: string;
  readonly adopted: boolean;
  readonly standing: boolean;
  readonly growers: number | null;
};

/** Practices taken up in a period or standing at its end, by kind; each site counts once a kind. */
export async function readPractices(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<PracticeInPeriod[]> {
  const rows = await db.$queryRaw<Row[]>`
    select practice::text as practice, site_id::text as "siteId", since >= ${from}::date as adopted,
      (until is null or until >= ${to}::date) as standing, growers
    from adopted_practice where network_id = ${actor.networkId}::uuid and voided_at is null
      and since <= ${to}::date and (since >= ${from}::date or until is null or until >= ${to}::date)
    order by practice, site_id, id`;
  const groups = grouped(rows, ({ practice }) => practice);
  return [...groups].map(([practice, same]) => {
    const adopted = same.filter((row) => row.adopted);
    return {
      practice,
      adoptedAt: [...new Set(adopted.map(({ siteId }) => siteId))],
      standingAt: [...new Set(same.filter((row) => row.standing).map(({ siteId }) => siteId))],
      growers: adopted.reduce((sum, { growers }) => sum + (growers ?? 0), 0),
      withoutGrowers: adopted.filter(({ growers }) => growers === null).length,
    };
  });
}
