import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';
import { parse } from 'csv-parse/sync';
import { strFromU8, unzipSync } from 'fflate';
import readSheets from 'read-excel-file/node';
import { beforeAll, describe, expect, it } from 'vitest';
import { unguardFormula } from '@/lib/base/formula-guard';
import { reportFileName } from '@/lib/report/document/report-file-name';
import { packageTable } from '@/lib/report/package/package-table';
import { reportPackage } from '@/lib/report/package/report-package';
import { reportWorkbook } from '@/lib/report/workbook/report-workbook';
import { sampleDocument } from './sample-document';

const report = sampleDocument();
const rows = report.sections.flatMap(({ tables = [] }) => tables.flatMap((table) => table.rows));
const words = {
  asNumber: (header: string, unit: string | undefined) => `${header} # ${unit ?? ''}`,
  limit: (header: string, end: 'low' | 'high') => `${header} ${end}`,
  how: 'How',
};
const provenance = {
  id: '0192f3a0-0000-7000-8000-000000000001',
  version: 2,
  networkName: 'Larkmoor Growers’ Network',
  builtAt: '2026-12-03T09:00:00.000Z',
  publishedAt: '2026-12-03T10:15:00.000Z',
};

describe('the workbook of a report', () => {
  it('holds every figure as it is read and as the same unrounded number, with the ends of its interval', async () => {
    const sheets = await readSheets(Buffer.from(await reportWorkbook(report, words)));
    const cells = new Set(sheets.flatMap(({ data }) => data.flat()));
    expect(sheets.map(({ sheet }) => sheet)).toHaveLength(report.sections.length + 1);
    for (const { cells: told } of rows)
      for (const { text, below, value, interval } of told) {
        const said = [text, below ?? ''].filter((part) => part !== '').join('; ');
        expect(
          [...cells].some((cell) => typeof cell === 'string' && cell.endsWith(said)),
          said,
        ).toBe(true);
        for (const number of [value, interval?.low, interval?.high])
          if (number !== undefined) expect(cells).toContain(number);
      }
  });

  it('heads the coordinator’s own words, apart from the lines of the report', async () => {
    const sheets = await readSheets(Buffer.from(await reportWorkbook(report, words)));
    const lines = sheets.flatMap(({ data }) => data.map(([first]) => first));
    const at = lines.indexOf(report.wordsLabel);
    expect(lines[at + 1]).toContain('Everybody soaked in lime this year');
    expect(lines.indexOf(report.wordsLabel, at + 1)).toBe(-1);
  });

  it('tells the unit of a figure that stands alone beside its number', async () => {
    const sheets = await readSheets(Buffer.from(await reportWorkbook(report, words)));
    const lines = sheets.flatMap(({ data }) => data);
    expect(lines.find(([label]) => label === 'Mass sold')?.slice(0, 3)).toEqual([
      'Mass sold',
      475.3,
      '475.3 kg',
    ]);
    expect(lines.find(([label]) => label === 'Batches started')?.slice(0, 3)).toEqual([
      'Batches started',
      1204,
      null,
    ]);
  });

  it('takes no words for a formula', async () => {
    const raw = unzipSync(await reportWorkbook(report, words));
    const sheets = Object.entries(raw).filter(([name]) => name.includes('worksheets/'));
    expect(sheets.length).toBeGreaterThan(1);
    for (const [, content] of sheets) expect(strFromU8(content)).not.toMatch(/<f[ >]/);
  });
});

type Field = { name: string; type: string; unit?: string; missingValues: { value: string }[] };
type Descriptor = {
  name: string;
  version: string;
  created: string;
  resources: { path: string; rows: number; bytes: number; hash: string; schema: { fields: Field[] } }[];
};

describe('the data package of a report', () => {
  let files: Record<string, Uint8Array>;
  let descriptor: Descriptor;
  beforeAll(async () => {
    files = unzipSync(await reportPackage(report, provenance));
    descriptor = JSON.parse(strFromU8(files['datapackage.json'] ?? new Uint8Array())) as Descriptor;
  });
  const table = (name: string): Record<string, string>[] =>
    parse(strFromU8(files[`data/${name}.csv`] ?? new Uint8Array()), { columns: true });

  it('has a descriptor that the published profile of Data Package 2.0 accepts, with version and date', () => {
    const read = (name: string) =>
      JSON.parse(
        readFileSync(path.join(import.meta.dirname, '../export/data-package-2.0', `${name}.json`), 'utf8'),
      ) as object;
    const ajv = addFormats(new Ajv({ strict: false, allErrors: true }));
    ajv.addSchema(read('tableschema'));
    const valid = ajv.compile(read('datapackage'));
    expect(valid(descriptor), JSON.stringify(valid.errors)).toBe(true);
    expect(descriptor).toMatchObject({ version: '2.0.0', created: '2026-12-03T10:15:00.000Z' });
  });

  it('names the rows, bytes and hash of each file as they are', () => {
    for (const { path: file, rows: count, bytes, hash, schema } of descriptor.resources) {
      const content = files[file] ?? new Uint8Array();
      expect(content.byteLength).toBe(bytes);
      expect(`sha256:${createHash('sha256').update(content).digest('hex')}`).toBe(hash);
      const lines: string[][] = parse(strFromU8(content));
      expect(lines[0]).toEqual(schema.fields.map(({ name }) => name));
      expect(lines.length - 1).toBe(count);
    }
  });

  it('holds the numbers of the document, and a withheld figure as withheld', () => {
    const harvest = table('harvest');
    expect(harvest.map(({ row, mass, mass_text }) => [row, mass, mass_text])).toEqual([
      ['sold', '212.412', '212.4\u00a0kg'],
      ['given_away', 'protected', 'protected'],
      ['eaten', '88', '88.0\u00a0kg'],
      ['total', '412.39', '412.4\u00a0kg'],
    ]);
    expect(table('facts').map(({ value }) => value)).toEqual(['14', 'protected', '1204', '475.3']);
    const told = rows.filter(({ group }) => group !== undefined);
    const methods = table('methods');
    expect(methods).toHaveLength(told.length);
    for (const [at, { cells }] of told.entries()) {
      const [, figure, protectable] = cells;
      expect(Number(methods[at]?.contamination)).toBe(figure?.value);
      expect(Number(methods[at]?.contamination_low)).toBe(figure?.interval?.low);
      expect(methods[at]?.contamination_how).toBe(figure?.history?.join('; '));
      expect(methods[at]?.yield_low).toBe(
        protectable?.interval === undefined ? 'protected' : String(protectable.interval.low),
      );
    }
    const fields = descriptor.resources.flatMap(({ schema }) => schema.fields);
    for (const { type, missingValues } of fields)
      if (type === 'number') expect(missingValues.map(({ value }) => value)).toContain('protected');
  });

  it('keeps the number of a column whose figures are all withheld', () => {
    const withheld = packageTable(
      'costs',
      {
        ...{ key: 'costs', caption: 'Costs' },
        columns: [
          { key: 'method', header: 'Method', numeric: false },
          { key: 'cost', header: 'Cost', numeric: true, unit: 'USD/kg' },
        ],
        rows: [{ key: 'lime', cells: [{ text: 'Lime' }, { text: report.protectedWord }] }],
      },
      report,
    );
    const field = withheld.fields.find(({ name }) => name === 'cost');
    expect(field).toMatchObject({ type: 'number', unit: 'USD/kg' });
    expect(withheld.rows.map((row) => field?.of(row))).toEqual(['protected']);
  });

  it('guards text that could become a formula, and gives it back as it was', () => {
    const [, given] = table('harvest');
    expect(given?.label).toBe("'-Given away");
    expect(unguardFormula(given?.label ?? '')).toBe('-Given away');
  });
});

describe('the name of a report’s file', () => {
  it('is its title in plain letters with its version', () => {
    expect(reportFileName({ title: 'Año de las setas: «Larkmoor»', version: 3 }, 'pdf')).toBe(
      'ano-de-las-setas-larkmoor-version-3.pdf',
    );
    expect(reportFileName({ title: '年', version: 1 }, 'zip')).toBe('report-version-1.zip');
  });
});
