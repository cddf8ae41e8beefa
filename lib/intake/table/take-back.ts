import 'server-only';
import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { addedTables, hangingOnVoided, voidAdded } from './added-records';
import { openFile } from './open-file';
import type { OpenFile } from './rows-to-take';
import { isRunning } from './running';
import { takeBackInput } from './take-back.input';

/** Statements name this many records at most, since none may take long. */
const atOnce = 1_000;

/** Of a table of many thousand rows. */
const longestMilliseconds = 300_000;

/** People are invited by links that were handed over; each is taken back where it stands. */
export function canBeTakenBack({ kind }: Pick<OpenFile, 'kind'>): boolean {
  return kind !== 'people';
}

/** With what a form posted; the reason stands in the history of every record. */
export async function takeBack(
  actor: Actor,
  raw: { readonly id: unknown; readonly reason: unknown },
  now = new Date(),
): Promise<Result<{ readonly records: number }>> {
  const input = parseInput(takeBackInput, raw);
  if (input.kind !== 'ok') return input;
  const options = { origin: 'file_import', reason: input.value.reason, longestMilliseconds, now } as const;
  return writeAs(actor, options, (context) => takeBackTable(context, input.value));
}

/**
 * Takes out of every figure and list what the rows of a table became, all of it or nothing: where somebody has recorded on it
 * since, that is told and nothing changes. It stays readable in the history. The table stands as it was brought, to be
 * mended and added again.
 */
async function takeBackTable(
  context: WriteContext,
  { id, reason }: z.output<typeof takeBackInput>,
): Promise<Result<{ readonly records: number }>> {
  const { db, actor, now } = context;
  await db.$queryRaw`select 1 from public.intake_file
    where network_id = ${actor.networkId}::uuid and id = ${id}::uuid for update`;
  const file = await openFile(context, id);
  const row = file && (await db.intakeFile.findFirst({ where: { id } }));
  if (!file || !row || !canBeTakenBack(file)) return notFound;
  if (isRunning(row, now)) return invalid('', 'intake-running');
  const ids = await recordsOfAdded(context, id);
  if (ids.length === 0) return invalid('', 'intake-nothing-added');
  let records = 0;
  const parts = Array.from({ length: Math.ceil(ids.length / atOnce) }, (_, at) =>
    ids.slice(at * atOnce, (at + 1) * atOnce),
  );
  const about = { networkId: actor.networkId, since: row.createdAt, now, reason };
  for (const table of addedTables)
    for (const some of parts) records += await voidAdded(db, table, { ...about, ids: some });
  let hanging = 0;
  for (const some of parts) hanging += await hangingOnVoided(db, some);
  if (hanging > 0) return invalid('', 'still-in-use', { count: hanging });
  await db.intakeRow.updateMany({
    where: { fileId: id, state: 'added' },
    data: { state: 'unread', problems: [], recordIds: [] },
  });
  await db.intakeFile.updateMany({
    where: { id },
    data: { state: 'uploaded', doneCount: 0, trouble: null, addedAt: null },
  });
  return ok({ records });
}

/**
 * The records that added rows stand for, those left out that a row of another table had added before: a line of a notebook
 * can tell of a batch that was there.
 */
async function recordsOfAdded({ db, actor }: ReadContext, fileId: string): Promise<string[]> {
  const rows = await db.$queryRaw<{ id: string }[]>`
    with own as (select * from public.intake_file where network_id = ${actor.networkId}::uuid and id = ${fileId}::uuid)
    select unnest(r.record_ids)::text as id from public.intake_row r
    where r.network_id = ${actor.networkId}::uuid and r.file_id = ${fileId}::uuid and r.state = 'added'
    except
    select unnest(r.record_ids)::text from own join public.intake_file f on f.network_id = own.network_id and f.id <> own.id
      and f.added_at >= own.created_at and f.added_at < own.added_at
    join public.intake_row r on r.network_id = f.network_id and r.file_id = f.id and r.state = 'added'`;
  return rows.map(({ id }) => id);
}
