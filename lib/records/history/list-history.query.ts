import 'server-only';
import type { ReadContext } from '@/lib/access/context';

type Values = Readonly<Record<string, unknown>>;

export type HistoryView = {
  readonly id: string;
  readonly at: string;
  readonly who: string | null;
  /** Whoever it was has left the network, and their name with them. */
  readonly byFormerMember: boolean;
  readonly tableName: string;
  readonly action: 'created' | 'changed';
  readonly oldValues: Values;
  readonly newValues: Values;
  readonly reason: string | null;
};

/** Every change to a record that the actor may see, oldest first; names are looked up, the history holds only ids. */
export async function listHistory({ db }: ReadContext, recordId: string): Promise<HistoryView[]> {
  const rows = await db.history.findMany({
    where: { recordId },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    take: 500,
  });
  const names = new Map<string, string | null>();
  for (const personId of new Set(rows.flatMap((row) => row.personId ?? []))) {
    const [found] = await db.$queryRaw<
      { name: string | null }[]
    >`select app.colleague_name(${personId}::uuid) as name`;
    names.set(personId, found?.name ?? null);
  }
  return rows.map((row) => ({
    id: row.id,
    at: row.at.toISOString(),
    who: row.personId === null ? null : (names.get(row.personId) ?? null),
    byFormerMember: row.personId !== null && (names.get(row.personId) ?? null) === null,
    tableName: row.tableName,
    action: row.action,
    oldValues: (row.oldValues ?? {}) as Values,
    newValues: (row.newValues ?? {}) as Values,
    reason: row.reason,
  }));
}
