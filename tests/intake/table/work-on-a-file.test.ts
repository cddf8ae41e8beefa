import { Client } from 'pg';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { keepFile } from '@/lib/intake/table/keep-file';
import { listFiles } from '@/lib/intake/table/list-files';
import { mendRow } from '@/lib/intake/table/mend-row';
import { openPoints } from '@/lib/intake/table/open-points';
import { refusedTable } from '@/lib/intake/table/refused-table';
import { changeLayout, settlePoints } from '@/lib/intake/table/settle';
import { startJob, stopJob } from '@/lib/intake/table/start-job';
import { oneRow, progressOf, viewFile } from '@/lib/intake/table/view-file';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const asked = { kind: 'harvests', now } as const;
let people: Growers;

const table = (...rows: string[]) => ['Batch,Date,Fresh (kg)', ...rows].join('\n');
const harvests = () => readAs(people.coordinator, ({ db }) => db.weighing.count());

beforeAll(async () => {
  people = await growers(superuser);
  const stock = await shed(people);
  const raw = { ...twentyBags(people, stock), code: 'OLD-1' };
  const made = await runAs(people.member, startBatchInput, startBatch, raw, { now });
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
});

describe('work on a table', () => {
  it('can be stopped while rows are added, and then nothing of it stays', async () => {
    const rows = Array.from({ length: 2_000 }, (_, index) => `OLD-1,2026-05-${10 + (index % 20)},0.004`);
    const file = await bring(people.member, asked, table(...rows));
    await settlePoints(people.member, file.id, {}, ['intake-harvest-twice']);
    await file.check();
    const before = await harvests();
    const job = await startJob(people.member, file.id, 'add', now);
    if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
    const running = { errors: [{ code: 'intake-running' }] };
    const [second, settled, progress] = await Promise.all([
      startJob(people.member, file.id, 'check', now),
      settlePoints(people.member, file.id, {}, []),
      readAs(people.member, (context) => progressOf(context, file.id, new Date())),
      stopJob(people.member, file.id),
    ]);
    expect(second).toMatchObject(running);
    expect(settled).toMatchObject(running);
    expect(progress).toMatchObject({ state: 'adding', total: 2_000 });
    await job.value.finished;
    expect(await file.look()).toMatchObject({
      state: 'checked',
      trouble: 'stopped',
      counts: { added: 0, new: 2_000 },
    });
    expect(await harvests()).toBe(before);
  });

  it('is not cut off by the time that a statement of a page may take', async () => {
    const client = new Client({ connectionString: superuser });
    await client.connect();
    await client.query(`create table public.seen_timeout (milliseconds text);
      create function public.see_timeout() returns trigger language plpgsql security definer as $$
      begin insert into public.seen_timeout values (current_setting('statement_timeout')); return null; end $$;
      create trigger see_timeout after insert on public.weighing for each row execute function public.see_timeout()`);
    const file = await bring(people.member, asked, table('OLD-1,2026-05-21,1.1'));
    await file.check();
    expect((await file.add()).counts).toMatchObject({ added: 1 });
    const seen = await client.query('select milliseconds from public.seen_timeout');
    await client.query('drop trigger see_timeout on public.weighing');
    await client.end();
    expect(seen.rows).toEqual([{ milliseconds: '1h' }]);
  });

  it('gives the rows that need a person back without a formula in them', async () => {
    const file = await bring(people.member, asked, table('"=1+1",2026-05-21,1.1'));
    const { layout } = await file.check();
    const words = { reason: 'why', say: () => '@said' };
    const refused = await readAs(people.member, (context) => refusedTable(context, file.id, layout, words));
    expect(refused.split('\r\n')[1]).toBe("'=1+1,2026-05-21,1.1,'@said");
  });

  it('is told as stopped when its process gave no sign for a minute, and can begin again', async () => {
    const file = await bring(people.member, asked, table('OLD-1,2026-05-10,1.5'));
    const job = await startJob(people.member, file.id, 'check', now);
    if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
    const later = new Date(Date.now() + 120_000);
    const seen = await readAs(people.member, (context) => viewFile(context, file.id, later));
    await job.value.finished;
    expect(['stopped', 'checked']).toContain(seen?.state);
    expect((await file.check()).state).toBe('checked');
  });

  it('goes on with a row that was mended, whose text from the file stays', async () => {
    const file = await bring(people.member, asked, table('OLD-1,2026-05-11,a lot', 'OLD-1,2026-05-12,1.5'));
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 1 });
    expect(
      await mendRow(people.member, file.id, {
        line: 2,
        cells: ['OLD-1', '2026-05-11', '0.75'],
        confirmed: [],
      }),
    ).toEqual({
      kind: 'ok',
      value: null,
    });
    expect((await file.recheck()).counts).toMatchObject({ new: 2, needs: 0 });
    const row = await readAs(people.member, ({ db }) =>
      db.intakeRow.findFirst({ where: { fileId: file.id, line: 2 } }),
    );
    expect(row).toMatchObject({ cells: ['OLD-1', '2026-05-11', 'a lot'], mended: { 2: '0.75' } });
    expect((await file.add()).counts).toMatchObject({ added: 2 });
  });

  it('asks about unlikely values once for the whole table', async () => {
    const file = await bring(people.member, asked, table('OLD-1,2026-05-13,20', 'OLD-1,2026-05-14,0.5'));
    await file.check();
    const { questions } = await readAs(people.member, (context) => openPoints(context, file.id));
    expect(questions.length).toBeGreaterThan(0);
    await settlePoints(
      people.member,
      file.id,
      {},
      questions.map(({ question }) => question.code),
    );
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 0 });
  });

  it('reads the rows anew when a person says how they are written', async () => {
    const file = await bring(people.member, asked, 'Batch;When;What\nOLD-1;05/06/2026;1510\n');
    const { layout, missing } = await file.look();
    expect(missing).toEqual(['weighedOn', 'fresh']);
    const columns = [
      { field: 'batch', unit: null },
      { field: 'weighedOn', unit: null },
      { field: 'fresh', unit: 'g' as const },
    ];
    const wishes = { ...layout, dateOrder: 'dmy' as const, columns };
    expect(
      await changeLayout(people.member, file.id, {
        ...wishes,
        columns: [...columns.slice(0, 2), columns[0] ?? { field: null, unit: null }],
      }),
    ).toMatchObject({
      errors: [{ field: 'columns.2', code: 'column-twice' }],
    });
    await changeLayout(people.member, file.id, wishes);
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 0 });
    await file.add();
    const added = await readAs(people.member, ({ db }) =>
      db.weighing.findFirst({ where: { freshGrams: 1510 } }),
    );
    expect(added).toMatchObject({ weighedOn: new Date('2026-06-05'), origin: 'file_import' });
    // The next table with the same headings is understood at once.
    const next = await bring(people.member, asked, 'Batch;When;What\nOLD-1;06/06/2026;1600\n');
    expect((await next.look()).layout).toMatchObject({ dateOrder: 'dmy', columns });
  });

  it('is for those who may see the table, and for nobody else', async () => {
    const file = await bring(
      people.member,
      { ...asked, siteId: people.millLane },
      table('OLD-1,2026-05-15,1.5'),
    );
    for (const other of [people.neighbour, people.funder, people.stranger]) {
      expect(await readAs(other, (context) => viewFile(context, file.id, now))).toBeUndefined();
      expect(await readAs(other, (context) => oneRow(context, file.id, 2))).toBeUndefined();
      expect(await startJob(other, file.id, 'add', now)).toEqual({ kind: 'not-found' });
      expect(await mendRow(other, file.id, { line: 2, cells: [], confirmed: [] })).toEqual({
        kind: 'not-found',
      });
      expect((await readAs(other, (context) => listFiles(context, now))).map(({ id }) => id)).not.toContain(
        file.id,
      );
      expect(await readAs(other, ({ db }) => db.intakeContent.count({ where: { id: file.id } }))).toBe(0);
    }
    expect(await readAs(people.coordinator, (context) => viewFile(context, file.id, now))).toMatchObject({
      id: file.id,
    });
    const bytes = new TextEncoder().encode(table('OLD-1,2026-05-15,1.5'));
    const kept = (who: 'funder' | 'neighbour') =>
      keepFile(people[who], { kind: 'harvests', siteId: people.millLane, fileName: 'a.csv' }, bytes);
    expect(await kept('funder')).toEqual({ kind: 'not-found' });
    expect(await kept('neighbour')).toMatchObject({ errors: [{ field: 'siteId', code: 'not-an-option' }] });
  });
});
