import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { secondLifeEnds } from '../batch/moved-units';
import type { TracedKind, TraceLink } from './trace-link';

type Row = {
  readonly from_kind: TracedKind;
  readonly from_id: string;
  readonly to_kind: TracedKind;
  readonly to_id: string;
  readonly amount: number | null;
  readonly void_reason: string | null;
  readonly later_seen: boolean;
  readonly withdrawn: boolean;
};

type Reader = Pick<ReadContext, 'db' | 'actor'>;

/**
 * The links that lead on from things of one kind (`on`), or to them (`back`), voided ones too, of those the actor may see.
 * Of a second life out of the actor's sight only whether it stands is known, and its reason is not told.
 */
export async function readLinks(
  { db, actor }: Reader,
  direction: 'on' | 'back',
  kind: TracedKind,
  ids: readonly string[],
): Promise<TraceLink[]> {
  const { networkId } = actor;
  const wanted = [...ids];
  const rows =
    direction === 'on'
      ? await db.$queryRaw<Row[]>`
          select from_kind, from_id::text, to_kind, to_id::text, amount, void_reason, later_seen, withdrawn from app.trace_link
          where network_id = ${networkId}::uuid and from_kind = ${kind} and from_id = any (${wanted}::uuid[])
          order by from_id, to_id`
      : await db.$queryRaw<Row[]>`
          select from_kind, from_id::text, to_kind, to_id::text, amount, void_reason, later_seen, withdrawn from app.trace_link
          where network_id = ${networkId}::uuid and to_kind = ${kind} and to_id = any (${wanted}::uuid[])
          order by from_id, to_id`;
  const links: TraceLink[] = [];
  for (const row of rows) {
    const gone =
      !row.later_seen &&
      row.void_reason === null &&
      !(await secondLifeEnds({ db }, row.from_id)).some(({ batchId }) => batchId === row.to_id);
    links.push({
      from: { kind: row.from_kind, id: row.from_id },
      to: { kind: row.to_kind, id: row.to_id },
      amount: row.amount,
      voided: gone ? '' : row.void_reason,
      withdrawn: row.withdrawn && !gone,
    });
  }
  return links;
}
