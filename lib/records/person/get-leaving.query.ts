import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { countMentions } from './count-mentions';

/** Tables of records that a person makes, told before they leave; the rest hangs on these. */
const recordTables = [
  'batch',
  'weighing',
  'look',
  'finding',
  'loss',
  'treatment_run',
  'substrate_lot',
  'spawn_lot',
  'photo',
] as const;

export type RecordTable = (typeof recordTables)[number];

export type Leaving = {
  readonly personId: string;
  readonly name: string;
  readonly records: readonly { readonly table: RecordTable; readonly count: number }[];
  /** Words that people wrote and in which the name or the address stands; they stay. Null where counting took too long. */
  readonly mentions: number | null;
};

/**
 * What a person leaves behind in the network: of the asker themselves, or of the person of a membership for the coordinator.
 * Undefined for anybody else, and for whoever has left already.
 */
export async function getLeaving(
  { db, actor }: ReadContext,
  membershipId: string | 'own',
): Promise<Leaving | undefined> {
  if (membershipId !== 'own' && actor.role !== 'coordinator') return undefined;
  const row = await db.membership.findFirst({
    where: {
      networkId: actor.networkId,
      voidedAt: null,
      erasedAt: null,
      ...(membershipId === 'own' ? { personId: actor.personId } : { id: membershipId }),
    },
    include: { person: { include: { contact: true } } },
  });
  if (!row) return undefined;
  const { personId } = row;
  const counted = await db.$queryRaw<{ table: RecordTable; count: number }[]>`
    select t.name as table, (select count(*)::int from app.recorded_by(${personId}::uuid, t.name)) as count
    from unnest(${[...recordTables]}::text[]) as t (name)`;
  return {
    personId,
    name: row.person.contact?.name ?? '',
    records: counted.filter(({ count }) => count > 0),
    mentions: await countMentions({ db }, personId),
  };
}
