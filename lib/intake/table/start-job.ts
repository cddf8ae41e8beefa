import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { WriteContext } from '@/lib/access/context';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { invalid, ok, type Result } from '@/lib/base/result';
import { claimFile, type JobMode, statesOf } from './claim-file';
import { openFile } from './open-file';
import type { OpenFile } from './rows-to-take';
import { type RowOutcome, runRows } from './run-rows';
import { waitsForTurn } from './running';
import { inTurn } from './take-turns';
import { writeOutcomes } from './write-outcomes';

class Stopped extends Error {}

const longestMilliseconds = 3_600_000;
/** Lets the statements of a job take as long as the job: half a table of 200,000 rows can be one of them. */
async function unhurried({ db }: WriteContext): Promise<void> {
  await db.$queryRaw`select set_config('statement_timeout', ${String(longestMilliseconds)}, true)`;
}

const rehearsed = invalid('', 'rehearsed');

/** Says how far the work is, in a transaction of its own so that others can read it; throws when asked to stop. */
async function report(
  actor: Actor,
  id: string,
  done: number,
  also?: (context: WriteContext) => Promise<void>,
) {
  const asked = await writeAs(actor, {}, async (context) => {
    const { db } = context;
    const data = { doneCount: done, heartbeatAt: new Date(), trouble: null };
    await db.intakeFile.updateMany({ where: { id }, data });
    await also?.(context);
    const file = await db.intakeFile.findFirst({ where: { id }, select: { stopAskedAt: true } });
    return ok(file === null || file.stopAskedAt !== null);
  });
  if (asked.kind !== 'ok' || asked.value) throw new Stopped('asked to stop');
}

/** Keeps a job that waits for its turn alive, and says that it waits. */
function waits(actor: Actor, id: string): Promise<void> {
  return report(actor, id, 0, async ({ db }) => {
    await db.intakeFile.updateMany({ where: { id }, data: { trouble: waitsForTurn } });
  });
}

/** Takes every row and takes everything back: what each would become is kept beside it. */
async function check(actor: Actor, file: OpenFile, mode: 'check' | 'recheck', now: Date): Promise<void> {
  let done = 0;
  const after = (outcomes: readonly RowOutcome[]) => {
    done += outcomes.length;
    return report(actor, file.id, done, (context) => writeOutcomes(context, file.id, outcomes, 'check'));
  };
  await inTurn(
    actor,
    { origin: 'file_import', longestMilliseconds, now },
    async (context) => {
      await report(actor, file.id, 0);
      await unhurried(context);
      await runRows(context, file, { states: statesOf[mode], rehearsal: true, after });
      return rehearsed;
    },
    () => waits(actor, file.id),
  );
}

/** Takes the rows that were found new, all in one transaction. */
async function add(actor: Actor, file: OpenFile, now: Date): Promise<void> {
  let done = 0;
  const result = await inTurn(
    actor,
    { origin: 'file_import', longestMilliseconds, now },
    async (context) => {
      await report(actor, file.id, 0);
      await unhurried(context);
      await runRows(context, file, {
        states: statesOf.add,
        rehearsal: false,
        after: async (outcomes) => {
          done += outcomes.length;
          await writeOutcomes(context, file.id, outcomes, 'add');
          await report(actor, file.id, done);
        },
      });
      return ok(null);
    },
    () => waits(actor, file.id),
  );
  if (result.kind !== 'ok') throw new Error(`the rows were not added: ${JSON.stringify(result)}`);
}

async function run(actor: Actor, file: OpenFile, mode: JobMode, now: Date): Promise<void> {
  const end = (state: 'uploaded' | 'checked' | 'added', trouble: string | null) =>
    writeAs(actor, { origin: 'file_import' }, async ({ db }) => {
      const addedAt = state === 'added' ? { addedAt: new Date() } : {};
      await db.intakeFile.updateMany({ where: { id: file.id }, data: { state, trouble, ...addedAt } });
      return ok(null);
    });
  try {
    await (mode === 'add' ? add(actor, file, now) : check(actor, file, mode, now));
    await end(mode === 'add' ? 'added' : 'checked', null);
  } catch (error) {
    const stopped = error instanceof Stopped;
    if (!stopped) {
      const why = error instanceof Error ? error.message : String(error);
      console.error(
        JSON.stringify({ level: 'error', what: `${mode} of an imported table`, file: file.id, why }),
      );
    }
    await end(mode === 'check' ? 'uploaded' : 'checked', stopped ? 'stopped' : 'failed');
  }
}

/**
 * Begins to check a table, or to add its new rows, and answers at once; `finished` ends with the work. Progress stands
 * beside the file and outlives the page that asked for it; a process that ends takes everything unfinished back.
 */
export async function startJob(
  actor: Actor,
  id: string,
  mode: JobMode,
  now = new Date(),
): Promise<Result<{ readonly finished: Promise<void> }>> {
  const file = await claimFile(actor, id, mode);
  if (file.kind !== 'ok') return file;
  return ok({ finished: run(actor, file.value, mode, now) });
}

/** Asks a running job to stop at its next step; nothing of it stays. */
export async function stopJob(actor: Actor, id: string): Promise<void> {
  const seen = await readAs(actor, (context) => openFile(context, id));
  if (!seen) return;
  await writeAs(actor, {}, async ({ db }) => {
    await db.intakeFile.updateMany({ where: { id }, data: { stopAskedAt: new Date() } });
    return ok(null);
  });
}
