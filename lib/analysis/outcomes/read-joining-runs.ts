import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { RunMember } from '../comparison/cluster-of-run';
import { boundsOf } from '../comparison/read-batch-rows';
import type { OutcomesWanted } from './outcomes-wanted';

/** The batches within the filter, at any site and of any method, that were treated in several runs and so join them to one cluster. */
export async function readJoiningRuns(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
): Promise<readonly RunMember[]> {
  const { from, to, species, container, material } = boundsOf(wanted);
  const [answer] = await db.$queryRaw<{ lines: string | null }[]>`
    select string_agg(distinct run_ids::text, E'\n') as lines from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container} and apart and cardinality(run_ids) > 1
      and inoculated_on between ${from}::date and ${to}::date
      and (${species}::uuid is null or species_id = ${species}::uuid)
      and (${material}::text is null or material_key = ${material}::text)`;
  const lines = answer?.lines ? answer.lines.split('\n') : [];
  return lines.map((line, index) => ({ id: `joining ${index}`, runIds: line.slice(1, -1).split(',') }));
}
