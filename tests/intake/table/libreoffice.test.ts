import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { unguardFormula } from '@/lib/base/formula-guard';
import { saveTable } from '@/lib/export/saved/save-table';
import type { SavedTableName } from '@/lib/export/saved/saved-tables';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { now } from '../../access/world';
import { type GrownWorld, grownWorld } from '../../export/grown-world';
import { testDatabase } from '../../support/database';
import { bring } from './bring';
import { hasLibreOffice, savedByLibreOffice } from './libreoffice';

vi.setConfig({ testTimeout: 300_000 });
const { superuser } = await testDatabase();
let world: GrownWorld;
let code: string;

beforeAll(async () => {
  world = await grownWorld(superuser);
  const { coordinator } = world.people;
  const batch = await readAs(coordinator, ({ db }) =>
    db.batch.findFirstOrThrow({ where: { id: world.batch } }),
  );
  code = batch.code;
}, 120_000);

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const string = (text: string) =>
  `<table:table-cell office:value-type="string"><text:p>${escaped(text)}</text:p></table:table-cell>`;
const number = (value: number) => `<table:table-cell office:value-type="float" office:value="${value}"/>`;
const date = (day: string) =>
  `<table:table-cell table:style-name="day" office:value-type="date" office:date-value="${day}"/>`;
const formula = (text: string) =>
  `<table:table-cell table:formula="of:=${escaped(text)}" office:value-type="float"/>`;

/** A notebook of harvests as somebody keeps it: what was on the scale, the crate, and a formula for what is left. */
function notebook(): string {
  const row = (cells: readonly string[]) => `<table:table-row>${cells.join('')}</table:table-row>`;
  const rows = [
    [...['Batch', 'Date', 'Gross kg', 'Crate kg', 'Fresh (kg)', 'Notes'].map(string)],
    [
      string(code),
      date('2026-05-10'),
      number(2.25),
      number(0.25),
      formula('[.C2]-[.D2]'),
      string('=by the door'),
    ],
    [
      string(code),
      date('2026-05-12'),
      number(1.61),
      number(0.25),
      formula('[.C3]-[.D3]'),
      string('niño, "azul"'),
    ],
    [string(code), date('2026-05-14'), number(0.5), number(0), formula('[.C4]-[.D4]'), string('0045')],
  ];
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
  xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
  xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"
  xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
  office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles>
  <number:date-style style:name="D1"><number:day number:style="long"/><number:text>/</number:text><number:month number:style="long"/><number:text>/</number:text><number:year number:style="long"/></number:date-style>
  <style:style style:name="day" style:family="table-cell" style:data-style-name="D1"/>
</office:automatic-styles>
<office:body><office:spreadsheet><table:table table:name="Cosecha">${rows.map(row).join('')}</table:table></office:spreadsheet></office:body>
</office:document>`;
}

const harvests = [
  { weighedOn: new Date('2026-05-10'), freshGrams: 2000, note: '=by the door' },
  { weighedOn: new Date('2026-05-12'), freshGrams: 1360, note: 'niño, "azul"' },
  { weighedOn: new Date('2026-05-14'), freshGrams: 500, note: '0045' },
];

/**
 * Records as text, whatever program wrote them: numbers to the 14 digits that a spreadsheet is sure of, no apostrophe
 * before what looks like a formula.
 */
const plain = (csv: string) =>
  (parse(csv, { bom: true, relax_column_count: true }) as string[][]).map((row) =>
    row.map((cell) => {
      const text = unguardFormula(cell).replaceAll('\r\n', '\n');
      return /^-?\d+([.]\d+)?$/.test(text) ? Number(text).toPrecision(14) : text;
    }),
  );

async function saved(name: SavedTableName, format: 'csv' | 'xlsx'): Promise<Buffer> {
  const made = await saveTable(
    world.people.coordinator,
    name,
    {},
    format,
    writtenWords(wordsFor('en', 'en-US')),
  );
  if (made.kind !== 'saved') throw new Error(made.kind);
  const bytes = await readFile(made.file);
  await rm(path.dirname(made.file), { recursive: true });
  return bytes;
}

if (!hasLibreOffice)
  it('LibreOffice is not on this machine: what it saves and opens is tried where it is', () => {
    console.info('LibreOffice (soffice) is not installed: its spreadsheets were not tried.');
    expect(hasLibreOffice).toBe(false);
  });
else
  describe('LibreOffice', () => {
    it('saves spreadsheets that go in with equal numbers, days and words, as a workbook and as text', async () => {
      const { coordinator } = world.people;
      const asked = { kind: 'harvests', now } as const;
      const workbook = await savedByLibreOffice(notebook(), 'fods', 'xlsx');
      const file = await bring(coordinator, { ...asked, fileName: 'cosecha.xlsx' }, workbook);
      expect((await file.look()).layout).toMatchObject({
        format: 'xlsx',
        sheets: ['Cosecha'],
        headerLine: 1,
      });
      expect((await file.check()).counts).toMatchObject({ new: 3, needs: 0 });
      await file.add();
      const added = await readAs(coordinator, ({ db }) =>
        db.weighing.findMany({ where: { origin: 'file_import' }, orderBy: { weighedOn: 'asc' } }),
      );
      expect(added).toMatchObject(harvests);
      expect(added).toHaveLength(3);

      const text = await savedByLibreOffice(notebook(), 'fods', 'csv');
      expect(text.toString()).toContain('10/05/2026');
      const again = await bring(coordinator, asked, text);
      expect((await again.look()).layout).toMatchObject({
        format: 'csv',
        dateOrder: 'dmy',
        decimal: 'point',
      });
      // The very same harvests: each of them is there.
      expect((await again.check()).counts).toMatchObject({ new: 0, there: 3, needs: 0 });
    });

    it.each(['harvests', 'looks', 'losses', 'batches'] as const)(
      'opens a workbook of %s with equal numbers, days and words, none of them a formula',
      async (name) => {
        const opened = plain((await savedByLibreOffice(await saved(name, 'xlsx'), 'xlsx', 'csv')).toString());
        const ours = plain((await saved(name, 'csv')).toString());
        expect(ours.length).toBeGreaterThan(1);
        expect(opened).toEqual(ours);
        if (name === 'looks') expect(opened.flat()).toContain('=HYPERLINK("http://example.org")');
      },
    );
  });
