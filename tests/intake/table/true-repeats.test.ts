import { beforeAll, describe, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { ok } from '@/lib/base/result';
import { mendRow } from '@/lib/intake/table/mend-row';
import { settlePoints } from '@/lib/intake/table/settle';
import { writeOutcomes } from '@/lib/intake/table/write-outcomes';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const asked = { kind: 'harvests', now } as const;
let people: Growers;
const batches = new Map<string, string>();

const table = (...rows: string[]) => ['Batch,Date,Fresh (g)', ...rows].join('\n');
const harvestsOf = (code: string) =>
  readAs(people.member, ({ db }) => db.weighingLine.count({ where: { batchId: batches.get(code) ?? '' } }));

beforeAll(async () => {
  people = await growers(superuser);
  const stock = await shed(people);
  for (const code of ['OLD-1', 'OLD-2', 'OLD-3', 'OLD-4']) {
    const raw = { ...twentyBags(people, stock), code };
    const made = await runAs(people.member, startBatchInput, startBatch, raw, { now });
    if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
    batches.set(code, made.value.id);
  }
});

describe('two equal rows', () => {
  it('of which one is recorded already become one more record, which the check foresaw', async () => {
    const batchId = batches.get('OLD-1') ?? '';
    const raw = { weighedOn: '2026-06-02', fresh: 500, lines: [{ batchId }] };
    const first = await runAs(people.member, recordWeighingInput, recordWeighing, raw, { now });
    expect(first.kind).toBe('ok');
    const file = await bring(people.member, asked, table('OLD-1,2026-06-02,500', 'OLD-1,2026-06-02,500'));
    expect((await file.check()).counts).toMatchObject({ there: 1, needs: 1 });
    expect(await file.wrong()).toEqual([[3, 'fresh', 'intake-harvest-twice']]);
    await settlePoints(people.member, file.id, {}, ['intake-harvest-twice']);
    expect((await file.check()).counts).toMatchObject({ there: 1, new: 1 });
    expect((await file.add()).counts).toMatchObject({ there: 1, new: 0, added: 1 });
    expect(await harvestsOf('OLD-1')).toBe(2);
  });

  it('of which one is mended after the other was added both come in', async () => {
    const file = await bring(people.member, asked, table('OLD-2,2026-06-02,500', 'ODL-2,2026-06-02,500'));
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 1 });
    await file.add();
    const cells = ['OLD-2', '2026-06-02', '500'];
    await mendRow(people.member, file.id, { line: 3, cells, confirmed: [] });
    expect((await file.recheck()).counts).toMatchObject({ added: 1, needs: 1, there: 0 });
    await mendRow(people.member, file.id, { line: 3, cells, confirmed: ['intake-harvest-twice'] });
    expect((await file.recheck()).counts).toMatchObject({ added: 1, new: 1, there: 0 });
    expect((await file.add()).counts).toMatchObject({ added: 2 });
    expect(await harvestsOf('OLD-2')).toBe(2);
    const again = await bring(people.member, asked, table('OLD-2,2026-06-02,500', 'OLD-2,2026-06-02,500'));
    expect((await again.check()).counts).toMatchObject({ there: 2, new: 0 });
  });
});

describe('an exact duplicate of a line', () => {
  it('is asked about, of a table of harvests and of a notebook, and never becomes a second harvest unasked', async () => {
    const harvest = 'OLD-4,2026-06-02,500';
    const [table1, table2] = [
      table(harvest, harvest),
      ['Batch code,Harvest date,Fresh (g)', harvest, harvest].join('\n'),
    ];
    for (const [kind, text] of [
      ['harvests', table1],
      ['notebook', table2],
    ] as const) {
      const file = await bring(people.member, { kind, siteId: people.millLane, now }, text);
      expect((await file.check()).counts).toMatchObject({ new: 1, needs: 1 });
      expect(await file.wrong()).toEqual([[3, 'fresh', 'intake-harvest-twice']]);
    }
    const file = await bring(people.member, asked, table1);
    await file.check();
    await file.add();
    expect(await harvestsOf('OLD-4')).toBe(1);
  });
});

describe('a row that was added', () => {
  it('stays added whatever a check still says of it', async () => {
    const file = await bring(people.member, asked, table('OLD-3,2026-06-02,500'));
    await file.check();
    await file.add();
    await writeAs(people.member, {}, async (context) => {
      await writeOutcomes(context, file.id, [{ line: 2, taken: { kind: 'new', recordIds: [] } }], 'check');
      return ok(null);
    });
    expect((await file.look()).counts).toMatchObject({ added: 1, new: 0 });
    const row = await readAs(people.member, ({ db }) =>
      db.intakeRow.findFirst({ where: { fileId: file.id } }),
    );
    expect(row?.recordIds).toHaveLength(1);
  });
});
