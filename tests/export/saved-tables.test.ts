import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import readXlsx from 'read-excel-file/node';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { filterInName } from '@/lib/export/saved/file-name';
import { saveTable } from '@/lib/export/saved/save-table';
import { type SavedTableName, savedTables } from '@/lib/export/saved/saved-tables';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { arrange, now } from '../access/world';
import { testDatabase } from '../support/database';
import { twentyBags } from '../support/shed';
import { type GrownWorld, grownWorld } from './grown-world';

const { superuser } = await testDatabase();
const english = writtenWords(wordsFor('en', 'en-US'));
let world: GrownWorld;

beforeAll(async () => {
  world = await grownWorld(superuser);
  const { people, stock } = world;
  for (let one = 0; one < 60; one += 1)
    await arrange(people.member, startBatchInput, startBatch, {
      ...twentyBags(people, stock),
      inoculatedOn: `2026-04-${String((one % 28) + 1).padStart(2, '0')}`,
    });
}, 120_000);

async function saved(actor: Actor, name: SavedTableName, query = {}, words = english) {
  const made = await saveTable(actor, name, query, 'csv', words);
  if (made.kind !== 'saved') throw new Error(made.kind);
  const text = await readFile(made.file, 'utf8');
  await rm(path.dirname(made.file), { recursive: true });
  const lines = parse(text, { bom: true, columns: true }) as Record<string, string>[];
  expect(lines).toHaveLength(made.rows);
  return { text, lines };
}

describe('rows saved from a list', () => {
  it('are those of all its pages under the same filter, in its order', async () => {
    const { coordinator } = world.people;
    const query = { site: world.people.millLane, from: '2026-04-02', to: '2026-04-27' };
    const codes: string[] = [];
    for (let after: string | undefined, first = true; first || after !== undefined; first = false) {
      const filter = batchFilterInput.parse({ ...query, after });
      const page = await readAs(coordinator, (context) => listBatches(context, filter, now));
      codes.push(...page.batches.map(({ code }) => code));
      after = page.older;
    }
    expect(codes.length).toBeGreaterThan(50);
    const { lines } = await saved(coordinator, 'batches', { ...query, after: 'ignored' });
    expect(lines.map((line) => line.Batch)).toEqual(codes);
  });

  it('hold what was found, lost and weighed, in grams and percent', async () => {
    const { lines } = await saved(world.people.member, 'batches', { to: '2026-04-01' });
    const first = lines.find((line) => line['Contaminated units'] === '2');
    expect(first).toMatchObject({
      'Units lost otherwise': '1',
      'Fresh mass so far (g)': '3000',
      'Dry mass (g)': '8799',
      'Last looked on': '2026-04-13',
    });
    expect(Number(first?.['Biological efficiency so far (%)'])).toBeCloseTo((100 * 3000) / 8799, 10);
  });

  it.each(Object.keys(savedTables) as SavedTableName[])(
    'are never those of another site: %s',
    async (name) => {
      const own = await saved(world.people.member, name);
      const neighbour = await saved(world.people.neighbour, name);
      const stranger = await saved(world.people.stranger, name);
      expect(JSON.stringify([neighbour.lines, stranger.lines])).not.toContain('Mill Lane');
      if (!['substrate-lots', 'spawn-lots', 'conditions', 'treatment-readings'].includes(name))
        expect(JSON.stringify(own.lines)).toContain('Mill Lane');
    },
  );

  it('have no blank where a column says that it never has one', async () => {
    for (const name of Object.keys(savedTables) as SavedTableName[]) {
      const { lines } = await saved(world.people.coordinator, name);
      const never = savedTables[name].columns.filter(({ blank }) => blank === 'never');
      for (const line of lines)
        for (const column of never)
          expect(line[english.heading(column)], `${name} ${column.key}`).not.toBe('');
    }
  });

  it('cannot become a formula in CSV and are plain text in a spreadsheet', async () => {
    const { text } = await saved(world.people.member, 'looks');
    expect(text).toContain(`"'=HYPERLINK(""http://example.org"")"`);
    const made = await saveTable(world.people.member, 'looks', {}, 'xlsx', english);
    if (made.kind !== 'saved') throw new Error(made.kind);
    const [rows, columns] = await readXlsx(made.file);
    expect(rows?.sheet).toBe('Rows');
    expect(rows?.data).toHaveLength(made.rows + 1);
    expect(rows?.data.flat()).toContain('=HYPERLINK("http://example.org")');
    expect(rows?.data[1]?.[2]).toBeInstanceOf(Date);
    expect(columns?.data.map(([name]) => name)).toContain('Looked on');
  });

  it('are written in the words of the reader', async () => {
    const spanish = writtenWords(wordsFor('es', 'es-MX'));
    const actor = { ...world.people.member, language: 'es' as const };
    const { lines } = await saved(actor, 'findings', {}, spanish);
    expect(lines[0]).toMatchObject({ Señal: 'Verde', Anulado: 'no' });
  });

  it('tell their filter in the name of the file', async () => {
    const { coordinator, millLane } = world.people;
    const query = { site: millLane, species: world.stock.oyster, from: '2026-04-02', container: 'bag' };
    expect(await readAs(coordinator, (context) => filterInName(context, query))).toBe(
      'site-MILL_species-pleurotus-ostreatus_container-bag_from-2026-04-02',
    );
  });
});
