import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { RowOutcome } from './run-rows';

/** Writes beside each row what became of it; `added` where the records stay. */
export async function writeOutcomes(
  { db, actor }: WriteContext,
  fileId: string,
  outcomes: readonly RowOutcome[],
  mode: 'check' | 'add',
): Promise<void> {
  const part = JSON.stringify(
    outcomes.map(({ line, taken }) => ({
      line,
      state: taken.kind === 'new' && mode === 'add' ? 'added' : taken.kind,
      problems: taken.kind === 'needs' ? taken.problems : [],
      // What a check made is taken back, and its id with it.
      record_ids: taken.kind === 'there' || (taken.kind === 'new' && mode === 'add') ? taken.recordIds : [],
    })),
  );
  await db.$executeRaw`
    update public.intake_row r set state = o.state::public.intake_row_state, problems = o.problems, record_ids = o.record_ids
    from jsonb_to_recordset(${part}::jsonb) as o(line int, state text, problems jsonb, record_ids uuid[])
    where r.network_id = ${actor.networkId}::uuid and r.file_id = ${fileId}::uuid and r.line = o.line
      and r.state <> 'added'`;
}
