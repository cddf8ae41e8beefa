import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type LivesTogether, livesTogether } from './lives-together';

type FirstRow = {
  code: string;
  container: string;
  units: number;
  dry: number | null;
  assumed: boolean;
  open: boolean;
  fresh: number;
};
type LifeRow = {
  id: string;
  fresh: number | null;
  open: boolean | null;
  sources: {
    readonly batchId: string;
    readonly units: number;
    readonly unitCount: number | null;
    readonly dryGrams: number | null;
  }[];
};

/**
 * What a batch gave in its first life, in its later lives, and in all; undefined when it has no later life or is not
 * the actor's to see. Under the actor's row policies: a later life at a site that is not theirs makes the sums unknown.
 */
export async function readLives(
  { db, actor }: ReadContext,
  batchId: string,
  asOf: Date,
): Promise<LivesTogether | undefined> {
  const { networkId } = actor;
  const lives = await db.$queryRaw<LifeRow[]>`
    with recursive line as (
      select l.batch_id as id from second_life_source l
      where l.network_id = ${networkId}::uuid and l.source_batch_id = ${batchId}::uuid and l.voided_at is null
      union
      select l.batch_id from line join second_life_source l
        on l.network_id = ${networkId}::uuid and l.source_batch_id = line.id and l.voided_at is null
    )
    select line.id, b.closed_on is null as open,
      case when b.id is null then null else (
        select coalesce(sum(w.fresh_grams), 0)::int from weighing_line w
        join weighing g on g.network_id = w.network_id and g.id = w.weighing_id and g.voided_at is null
        where w.network_id = ${networkId}::uuid and w.batch_id = line.id and w.voided_at is null) end as fresh,
      (select coalesce(json_agg(json_build_object('batchId', s.source_batch_id, 'units', s.units_moved,
          'unitCount', f.unit_count, 'dryGrams', f.dry_grams)), '[]') from second_life_source s
        left join batch f on f.network_id = s.network_id and f.id = s.source_batch_id
        where s.network_id = ${networkId}::uuid and s.batch_id = line.id and s.voided_at is null) as sources
    from line left join batch b on b.network_id = ${networkId}::uuid and b.id = line.id
    where b.voided_at is null and (b.id is not null or exists (
      select 1 from second_life_source s cross join lateral app.second_life_ends(s.source_batch_id) e
      where s.network_id = ${networkId}::uuid and s.batch_id = line.id and e.batch_id = line.id))`;
  if (lives.length === 0) return undefined;
  const [first] = await db.$queryRaw<FirstRow[]>`
    select b.code, b.container_kind::text as container, b.unit_count as units, b.dry_grams as dry,
      b.dry_assumed as assumed, b.closed_on is null as open,
      (select coalesce(sum(w.fresh_grams), 0)::int from weighing_line w
        join weighing g on g.network_id = w.network_id and g.id = w.weighing_id and g.voided_at is null
        where w.network_id = b.network_id and w.batch_id = b.id and w.voided_at is null) as fresh
    from batch b where b.network_id = ${networkId}::uuid and b.id = ${batchId}::uuid`;
  if (!first) return undefined;
  return livesTogether(
    {
      id: batchId,
      code: first.code,
      isBed: first.container === 'bed',
      units: first.units,
      dryGrams: first.dry,
      dryAssumed: first.assumed,
      open: first.open,
      freshGrams: first.fresh,
    },
    lives.map(({ id, fresh, open, sources }) => ({
      batchId: id,
      freshGrams: fresh,
      open: open ?? true,
      sources: sources.map((source) => ({ ...source, unitCount: source.unitCount ?? source.units })),
    })),
    asOf.toISOString(),
  );
}
