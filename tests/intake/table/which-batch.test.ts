import { beforeAll, describe, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { choiceKey } from '@/lib/intake/table/rows-to-take';
import { settlePoints } from '@/lib/intake/table/settle';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;
const batches = new Map<string, string>();

async function start(code: string, siteId: string): Promise<void> {
  const bags = twentyBags(people, stock);
  const components = bags.components.map((one) => ({ ...one, treatment: `method:${stock.steam}` }));
  const raw = { ...bags, code, siteId, components };
  const made = await runAs(people.coordinator, startBatchInput, startBatch, raw, { now });
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  batches.set(code, made.value.id);
}

const lines = (head: string, ...rows: string[]) => [head, ...rows].join('\n');
const gramsOf = async (code: string) => {
  const batchId = batches.get(code) ?? '';
  const all = await readAs(people.coordinator, ({ db }) => db.weighingLine.findMany({ where: { batchId } }));
  return all.map(({ freshGrams }) => freshGrams);
};
const harvestHead = 'Batch,Date,Fresh (g)';
const notebookHead =
  'Batch,Site,Species,Container,Units,Inoculated,Substrate,Treatment,Harvest date,Weight (g)';
const line = (
  code: string,
  { site = '', species = 'Pleurotus ostreatus', on = '2026-04-01', grams = '410' },
) => `${code},${site},${species},bag,20,${on},STRAW-1,steam,2026-05-12,${grams}`;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  for (const code of ['1-12', 'AB-1', 'MINE-1', 'MINE-2']) await start(code, people.millLane);
  await start('THEIRS-1', people.quarry);
});

describe('a row of another site than its batch', () => {
  it.each([
    ['harvests', harvestHead, '2026-05-12,500'],
    ['findings', 'Batch,Found on,Units,Sign,Stage,Action', '2026-05-12,1,green,cropping,isolated'],
  ] as const)('of a table of %s needs a person', async (kind, head, rest) => {
    const chosen = await bring(
      people.coordinator,
      { kind, siteId: people.millLane, now },
      lines(head, `THEIRS-1,${rest}`, `MINE-1,${rest}`),
    );
    expect((await chosen.check()).counts).toMatchObject({ new: 1, needs: 1 });
    expect(await chosen.wrong()).toEqual([[2, 'site', 'intake-other-site']]);
    const named = await bring(
      people.coordinator,
      { kind, now },
      lines(`${head},Site`, `THEIRS-1,${rest},QUARRY`, `MINE-1,${rest},Quarry Farm`),
    );
    expect((await named.check()).counts).toMatchObject({ new: 1, needs: 1 });
    expect(await named.wrong()).toEqual([[3, 'site', 'intake-other-site']]);
  });

  it('of a notebook needs a person, and so does one with another day or species', async () => {
    const table = lines(
      notebookHead,
      line('MINE-1', {}),
      line('MINE-1', { site: 'QUARRY' }),
      line('MINE-1', { on: '2026-04-09' }),
      line('MINE-1', { species: 'Lentinula edodes' }),
      line('THEIRS-1', {}),
      line('FRESH-1', {}),
      line('FRESH-1', { on: '2026-04-09', grams: '420' }),
    );
    const file = await bring(people.coordinator, { kind: 'notebook', siteId: people.millLane, now }, table);
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 5 });
    expect(await file.wrong()).toEqual([
      [3, 'siteId', 'intake-other-site'],
      [4, 'inoculatedOn', 'intake-other-day'],
      [5, 'speciesId', 'intake-other-species'],
      [6, 'siteId', 'intake-other-site'],
      [8, 'inoculatedOn', 'intake-other-day'],
    ]);
    expect(await gramsOf('MINE-1')).toEqual([]);
  });
});

describe('the code of a batch', () => {
  it('keeps its numbers apart: 11-2 is not 1-12', async () => {
    const harvests = await bring(
      people.coordinator,
      { kind: 'harvests', now },
      lines(harvestHead, '11-2,2026-05-12,500', '1 12,2026-05-12,400'),
    );
    expect((await harvests.check()).counts).toMatchObject({ new: 1, needs: 1 });
    expect(await harvests.wrong()).toEqual([[2, 'lines.0.batchId', 'intake-unknown']]);
    const notebook = await bring(
      people.coordinator,
      { kind: 'notebook', siteId: people.millLane, now },
      lines(notebookHead, line('1-12', {}), line('11-2', { grams: '420' })),
    );
    expect((await notebook.check()).counts).toMatchObject({ new: 2 });
    await notebook.add();
    expect(await gramsOf('1-12')).toEqual([410]);
    expect(
      await readAs(people.coordinator, ({ db }) =>
        db.batch.count({ where: { code: { in: ['1-12', '11-2'] } } }),
      ),
    ).toBe(2);
  });

  it('that is written apart in two ways is asked about, never guessed and never a new batch', async () => {
    const alone = await bring(
      people.coordinator,
      { kind: 'harvests', now },
      lines(harvestHead, 'a-b1,2026-05-12,500'),
    );
    expect((await alone.check()).counts).toMatchObject({ new: 1 });
    const harvests = await bring(
      people.coordinator,
      { kind: 'harvests', now },
      lines(harvestHead, 'A-B1,2026-05-12,500', 'AB 1,2026-05-12,500'),
    );
    await harvests.check();
    expect(await harvests.wrong()).toEqual([[2, 'lines.0.batchId', 'intake-twice']]);
    const notebook = await bring(
      people.coordinator,
      { kind: 'notebook', siteId: people.millLane, now },
      lines(notebookHead, line('A-B1', {}), line('AB-1', {})),
    );
    expect((await notebook.check()).counts).toMatchObject({ new: 1, needs: 1 });
    expect(await notebook.wrong()).toEqual([[2, 'code', 'intake-two-codes']]);
  });

  it('is found with blanks around it and with the apostrophe of a guarded cell before it', async () => {
    const harvests = await bring(
      people.coordinator,
      { kind: 'harvests', now },
      lines(harvestHead, '  MINE-1 ,2026-05-12,500', "'-mine-1,2026-05-12,501", "'MINE-1,2026-05-12,502"),
    );
    expect((await harvests.check()).counts).toMatchObject({ new: 3 });
    const notebook = await bring(
      people.coordinator,
      { kind: 'notebook', siteId: people.millLane, now },
      lines(notebookHead, line('  MINE-1 ', {}), line("'-mine-1", { grams: '411' })),
    );
    expect((await notebook.check()).counts).toMatchObject({ new: 2 });
    await notebook.add();
    expect((await gramsOf('MINE-1')).sort()).toEqual([410, 411]);
  });

  it('goes before what a person once chose for its text', async () => {
    const row = lines(harvestHead, 'MINE-2,2026-05-12,500', 'MINE-3,2026-05-12,300');
    const file = await bring(people.coordinator, { kind: 'harvests', now }, row);
    const theirs = batches.get('THEIRS-1') ?? '';
    const choices = { [choiceKey('batch', 'MINE-2')]: theirs, [choiceKey('batch', 'MINE-3')]: theirs };
    await settlePoints(people.coordinator, file.id, choices, []);
    await file.check();
    await file.add();
    expect(await gramsOf('MINE-2')).toEqual([500]);
    expect(await gramsOf('THEIRS-1')).toEqual([300]);
  });
});
