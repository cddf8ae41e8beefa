import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { keepFile } from '@/lib/intake/table/keep-file';
import { openFile } from '@/lib/intake/table/open-file';
import { refusedTable } from '@/lib/intake/table/refused-table';
import { startJob } from '@/lib/intake/table/start-job';
import { needyRows, viewFile } from '@/lib/intake/table/view-file';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;

const rowCount = 10_000;
const badEvery = 20;
const batchCodes = Array.from({ length: 100 }, (_, index) => `OLD-${String(index + 1).padStart(3, '0')}`);

/** Five ways in which a row of a notebook goes wrong, in turn. */
function badRow(row: number, code: string): string[] {
  const ways = [
    ['NOBODY-1', '12/05/2026', '1,25', '1'],
    [code, '31/02/2026', '1,25', '1'],
    [code, '12/05/2026', 'a lot', '1'],
    [code, '12/05/2026', '', '1'],
    [code, '12/12/2026', '1,25', '1'],
  ];
  return [...(ways[row % ways.length] ?? []), `row ${row} "spoiled"; on purpose`];
}

function notebook(): string[][] {
  return Array.from({ length: rowCount }, (_, index) => {
    const code = batchCodes[index % batchCodes.length] ?? '';
    if (index % badEvery === badEvery - 1) return badRow(Math.floor(index / badEvery), code);
    const day = String(10 + (Math.floor(index / batchCodes.length) % 20)).padStart(2, '0');
    const grams = 100 + Math.floor(index / batchCodes.length);
    return [code.toLowerCase(), `${day}/05/2026`, `0,${grams}`, '', index % 7 === 0 ? ' early; "good" ' : ''];
  });
}

const quoted = (cell: string) => (/[";\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
const asCsv = (rows: readonly (readonly string[])[]) =>
  [['Lote', 'Fecha de cosecha', 'Peso fresco (kg)', 'Oleada', 'Notas'], ...rows]
    .map((row) => row.map(quoted).join(';'))
    .join('\r\n');

async function brought(rows: readonly (readonly string[])[]): Promise<string> {
  const bytes = new TextEncoder().encode(asCsv(rows));
  const kept = await keepFile(
    people.member,
    { kind: 'harvests', siteId: null, fileName: 'libro.csv' },
    bytes,
  );
  if (kept.kind !== 'ok') throw new Error(JSON.stringify(kept));
  return kept.value.id;
}

async function work(id: string, mode: 'check' | 'add') {
  const job = await startJob(people.member, id, mode, now);
  if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
  await job.value.finished;
  const view = await readAs(people.member, (context) => viewFile(context, id, new Date()));
  if (!view) throw new Error('the file is gone');
  return view;
}

const harvests = () => readAs(people.member, ({ db }) => db.weighing.count());

beforeAll(async () => {
  people = await growers(superuser);
  const stock = await shed(people);
  for (const code of batchCodes) {
    const raw = { ...twentyBags(people, stock), code };
    const made = await runAs(people.member, startBatchInput, startBatch, raw, { now });
    if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  }
}, 120_000);

describe('ten thousand harvests with five hundred bad ones', () => {
  it('are understood, checked without a write, added once, and the bad ones come back as they were', async () => {
    const rows = notebook();
    const id = await brought(rows);
    const file = await readAs(people.member, (context) => openFile(context, id));
    expect(file?.layout).toMatchObject({
      delimiter: 'semicolon',
      decimal: 'comma',
      dateOrder: 'dmy',
      headerLine: 1,
    });
    expect(file?.layout.columns.map(({ field }) => field)).toEqual([
      'batch',
      'weighedOn',
      'fresh',
      'flush',
      'note',
    ]);

    const checked = await work(id, 'check');
    expect(checked).toMatchObject({ state: 'checked', trouble: null });
    expect(checked.counts).toEqual({ unread: 0, new: 9_500, there: 0, needs: 500, added: 0 });
    expect(await harvests()).toBe(0);

    const needy = await readAs(people.member, (context) => needyRows(context, id, 0, 1_000));
    expect(needy.map(({ line }) => line)).toEqual(
      rows.flatMap((_, index) => (index % badEvery === badEvery - 1 ? [index + 2] : [])),
    );
    expect(needy.slice(0, 5).map(({ problems: [first] }) => [first?.field, first?.code])).toEqual([
      ['lines.0.batchId', 'intake-unknown'],
      ['weighedOn', 'not-a-date'],
      ['fresh', 'not-a-number'],
      ['fresh', 'missing'],
      ['weighedOn', 'future-date'],
    ]);

    const added = await work(id, 'add');
    expect(added).toMatchObject({ state: 'added', trouble: null });
    expect(added.counts).toEqual({ unread: 0, new: 0, there: 0, needs: 500, added: 9_500 });
    expect(await harvests()).toBe(9_500);

    const refused = await readAs(people.member, (context) =>
      refusedTable(context, id, added.layout, {
        reason: 'reason',
        say: (problems) => problems[0]?.code ?? '',
      }),
    );
    const back: string[][] = parse(refused, { delimiter: ';', bom: true });
    expect(back.slice(1).map((row) => row.slice(0, 5))).toEqual(
      rows.filter((_, index) => index % badEvery === badEvery - 1),
    );

    const kept = await readAs(people.member, ({ db }) =>
      db.intakeRow.findMany({ where: { fileId: id, state: 'added' }, orderBy: { line: 'asc' } }),
    );
    expect(kept.map(({ cells }) => cells)).toEqual(
      rows.filter((_, index) => index % badEvery !== badEvery - 1),
    );

    const again = await work(await brought(rows), 'check');
    expect(again.counts).toEqual({ unread: 0, new: 0, there: 9_500, needs: 500, added: 0 });

    const mended = back.slice(1).map(([, , , , note = ''], index) => {
      const code = batchCodes[index % batchCodes.length] ?? '';
      return [code, '30/05/2026', `0,05${Math.floor(index / batchCodes.length)}`, '', note];
    });
    const mendedId = await brought(mended);
    expect((await work(mendedId, 'check')).counts).toMatchObject({ new: 500, needs: 0 });
    await work(mendedId, 'add');
    expect(await harvests()).toBe(10_000);
    const last = await work(await brought([...rows, ...mended]), 'check');
    expect(last.counts).toMatchObject({ new: 0, there: 10_000 });
  }, 600_000);
});
