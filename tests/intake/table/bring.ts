import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import type { JobMode } from '@/lib/intake/table/claim-file';
import { keepFile } from '@/lib/intake/table/keep-file';
import { startJob } from '@/lib/intake/table/start-job';
import { needyRows, viewFile } from '@/lib/intake/table/view-file';

type Asked = {
  readonly kind: RecordTableKind;
  readonly siteId?: string;
  readonly now: Date;
  readonly fileName?: string;
};

/** Brings a table as a person does; answers its file with the steps that follow. */
export async function bring(
  actor: Actor,
  { kind, siteId, now, fileName = 'table.csv' }: Asked,
  table: string | Uint8Array,
) {
  const bytes = typeof table === 'string' ? new TextEncoder().encode(table) : new Uint8Array(table);
  const kept = await keepFile(actor, { kind, siteId: siteId ?? null, fileName }, bytes);
  if (kept.kind !== 'ok') throw new Error(JSON.stringify(kept));
  const { id } = kept.value;
  const look = async () => {
    const view = await readAs(actor, (context) => viewFile(context, id, new Date()));
    if (!view) throw new Error('the file is gone');
    return view;
  };
  const work = async (mode: JobMode) => {
    const job = await startJob(actor, id, mode, now);
    if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
    await job.value.finished;
    return look();
  };
  return {
    id,
    look,
    check: () => work('check'),
    add: () => work('add'),
    recheck: () => work('recheck'),
    /** Line, field and code of everything that stands against rows. */
    wrong: async () =>
      (await readAs(actor, (context) => needyRows(context, id, 0, 10_000))).flatMap(({ line, problems }) =>
        problems.map(({ field, code }) => [line, field, code] as const),
      ),
  };
}
