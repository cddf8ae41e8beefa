import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import { guessRecordLayout } from '@/lib/intake/table/guess-layout';
import { keepFile } from '@/lib/intake/table/keep-file';
import { fieldsOfKind } from '@/lib/intake/table/kinds/fields-of-kind';
import { readRow } from '@/lib/intake/table/read-row';
import { readTable } from '@/lib/intake/table/read-table';
import { startJob } from '@/lib/intake/table/start-job';
import { needyRows, viewFile } from '@/lib/intake/table/view-file';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';
import { makeWorkbook } from './make-workbook';

/** `IMPORT_FUZZ_RUNS=10000 npx vitest run tests/intake/table/mutated-files.test.ts` takes longer and finds more. */
const runs = Number(process.env.IMPORT_FUZZ_RUNS ?? 300);
/** How many of them are checked to the end in the database. */
const checks = Number(process.env.IMPORT_FUZZ_CHECKS ?? Math.ceil(runs / 10));
const now = new Date('2026-07-20T15:00:00Z');
const { superuser } = await testDatabase();
let people: Growers;

vi.setConfig({ testTimeout: Math.max(180_000, Math.max(runs, checks) * 1_000) });

const tables: Readonly<Record<RecordTableKind, string>> = {
  harvests:
    'Batch;Date;Fresh (kg);Flush;Trimmed;Sold;Notes\nOLD-1;12/05/2026;1,25;1;yes;0,5;"a ""b"""\nOLD-1;13/05/2026;0,5;;;;\n',
  batches:
    'Code,Species,Container,Bags,Inoculated,Substrate,Treatment,Wet weight,Moisture %,Spawn,Spawn used\nN-1,Pleurotus ostreatus,bag,20,2026-04-02,STRAW-1,steam,29.3,70,SP-1,1.2\n,Pleurotus ostreatus,bag,4,2026-04-03,STRAW-1,steam,6,70,SP-2,0.2\nN-1,Pleurotus ostreatus,bag,5,2026-04-03,STRAW-1,steam,7,70,SP-1,0.2\n',
  treatments:
    'Run;Site;Method;Date;In at;Out at;Water (l);Lime (g);Temp (°C);pH;Notes\nK-1;Mill Lane Garden;Cold lime soak;12/05/2026;18:00;10:30;200;750;14,5;12,4;\n;MILL;steam;13/05/2026 08:00;;2 h;;;;;hot\n',
  notebook:
    'Lote,Especie,Recipiente,Fecha de siembra,Sustrato,Tratamiento,Fecha de cosecha,Peso (g),Contaminadas,Moho\nN-2,Pleurotus ostreatus,bolsa,2026-04-02,STRAW-1,steam,2026-05-12,410,1,verde\nN-2,Pleurotus ostreatus,bolsa,2026-04-02,STRAW-1,steam,2026-05-19,280,,\nN-3,Pleurotus ostreatus,bolsa,2026-04-02,STRAW-1,steam,,,1,verde\nOLD-1,,,,,,2026-05-19,300,2,\n',
  findings: 'Batch\tFound on\tUnits\tSign\tAction\nOLD-1\t2026-04-20\t2\tgreen\tisolated\n',
  spawn_lots: 'Lot,Species,Form,Made on,Received (kg)\nSPN-1,Pleurotus ostreatus,grain,2026-05-01,12\n',
  substrate_lots: 'Lot,Material,Received on,Weight (kg),Moisture\nL-1,Wheat straw,2026-05-01,120,11\n',
  sites: 'Code,Name,Kind,Opened\nELM,Elm Court,farm,2024-03-01\n',
  people: 'Name,E-mail,Role,Sites\nMoss Ferrant,moss@example.org,member,"Mill Lane Garden, QUARRY"\n',
};

const odd = fc.constantFrom(
  ...[
    '"',
    ';',
    ',',
    '\t',
    '\n',
    '\r',
    '\u0000',
    '\ufffd',
    '🍄',
    "'=1+1",
    '=cmd|x',
    '-',
    '+',
    '@',
    'NaN',
    '1e999',
  ],
  ...[
    '9'.repeat(400),
    '١٢',
    '31/02/2026',
    '00/00/0000',
    '0x10',
    '٫',
    '\u202e',
    '__proto__',
    '{}',
    '<b>',
    '%s',
  ],
);
const stepParts = { at: fc.nat(400), cut: fc.nat(12) };
const step = fc.record({ ...stepParts, put: fc.oneof(odd, fc.string({ maxLength: 6 })) });
const xml = fc.constantFrom(
  ...[
    '<',
    '>',
    '/>',
    '&amp;',
    '&#0;',
    '&x;',
    '<!--',
    ']]>',
    '<![CDATA[',
    '<?a?>',
    '</row>',
    '<row>',
    '<c r="XFD9">',
  ],
  ...['r="A999"', 't="s"', 't="b"', 't="d"', 's="9"', '<v>1e400</v>', '_x0000_', '<rPh>', 'numFmtId="x"'],
);
const kinds = Object.keys(tables) as RecordTableKind[];

/** A table of some kind, cut and written into at random places; sometimes as bytes that are no text. */
const mutated = fc
  .record({ kind: fc.constantFrom(...kinds), steps: fc.array(step, { maxLength: 6 }), raw: fc.boolean() })
  .map(({ kind, steps, raw }) => {
    let text = tables[kind];
    for (const { at, cut, put } of steps) {
      const from = at % (text.length + 1);
      text = text.slice(0, from) + put + text.slice(from + cut);
    }
    return { kind, bytes: new Uint8Array(Buffer.from(text, raw ? 'latin1' : 'utf8')) };
  });

beforeAll(async () => {
  people = await growers(superuser);
  const stock = await shed(people);
  const raw = { ...twentyBags(people, stock), code: 'OLD-1' };
  const made = await runAs(people.member, startBatchInput, startBatch, raw, { now });
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
});

const usual = { dateOrder: 'dmy', decimal: 'comma', units: ['kg', 'L', 'celsius'] } as const;

/** Reads every row of a file as far as no database is needed. */
async function readAll(kind: RecordTableKind, bytes: Uint8Array): Promise<void> {
  const read = await readTable(bytes, {});
  if (typeof read === 'string') return;
  const fields = fieldsOfKind[kind];
  const layout = guessRecordLayout(read.rows, fields, read.written, usual);
  const targets = fields.map(({ target }) => target);
  const byName = new Map(fields.map((field) => [field.name, field]));
  for (const cells of read.rows.slice(layout.headerLine)) {
    const { errors } = readRow(cells, layout, byName, () => undefined);
    for (const { field, code } of errors) {
      expect(targets).toContain(field);
      expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  }
}

describe('a file that was mutated', () => {
  it('is read without a crash, and what is wrong names its column', async () => {
    await fc.assert(
      fc.asyncProperty(mutated, ({ kind, bytes }) => readAll(kind, bytes)),
      { numRuns: runs },
    );
  });

  it('is read without a crash when it is a workbook', async () => {
    const text = (value: string) => ({ value, type: String });
    const book = await writeWorkbook([
      {
        sheet: 'A',
        data: [
          [text('Batch'), text('Date'), text('Kg')],
          [text('OLD-1'), text('12/05/2026'), { value: 1.5, type: Number }],
        ],
      },
    ]).toBuffer();
    const flips = fc.array(fc.record({ at: fc.nat(book.length - 1), to: fc.nat(255) }), {
      minLength: 1,
      maxLength: 8,
    });
    await fc.assert(
      fc.asyncProperty(flips, fc.nat(book.length), async (changes, end) => {
        const bytes = new Uint8Array(book);
        for (const { at, to } of changes) bytes[at] = to;
        await readAll('harvests', end % 5 === 0 ? bytes.subarray(0, end) : bytes);
      }),
      { numRuns: Math.ceil(runs / 4) },
    );
  });

  it('is read without a crash when it is a workbook whose parts were written into', async () => {
    const sheet =
      '<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><t>Date</t></is></c><c r="C1" t="s"><v>1</v></c></row><row r="2"><c r="A2" t="s"><v>2</v></c><c r="B2" s="1"><v>46154</v></c><c r="C2"><v>1.5</v></c></row></sheetData></worksheet>';
    const texts = '<si><t>Batch</t></si><si><r><t>K</t></r><r><t>g</t></r></si><si><t>OLD-1</t></si>';
    const styles = '<cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs>';
    const written = (text: string, steps: readonly { at: number; cut: number; put: string }[]) =>
      steps.reduce((now, { at, cut, put }) => {
        const from = at % (now.length + 1);
        return now.slice(0, from) + put + now.slice(from + cut);
      }, text);
    const some = fc.array(fc.record({ ...stepParts, put: fc.oneof(odd, xml) }), { maxLength: 3 });
    await fc.assert(
      fc.asyncProperty(some, some, some, async (inSheet, inTexts, inStyles) => {
        const parts = {
          sheet: written(sheet, inSheet),
          texts: written(texts, inTexts),
          styles: written(styles, inStyles),
        };
        await readAll('harvests', await makeWorkbook(parts));
      }),
      { numRuns: Math.ceil(runs / 4) },
    );
  });

  it('is checked to the end: nothing is written, and each row that needs a person says its line and why', async () => {
    const counted = () =>
      readAs(people.coordinator, async ({ db }) => [
        await db.batch.count(),
        await db.weighing.count(),
        await db.finding.count(),
        await db.site.count(),
        await db.spawnLot.count(),
        await db.substrateLot.count(),
        await db.treatmentRun.count(),
        await db.treatmentReading.count(),
        await db.invitation.count(),
      ]);
    const before = await counted();
    await fc.assert(
      fc.asyncProperty(mutated, async ({ kind, bytes }) => {
        const asked = { kind, siteId: kind === 'sites' ? null : people.millLane, fileName: 'mutated.csv' };
        const kept = await keepFile(people.coordinator, asked, bytes);
        if (kept.kind !== 'ok') return expect(kept.kind).toBe('invalid');
        const { id } = kept.value;
        const job = await startJob(people.coordinator, id, 'check', now);
        if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
        await job.value.finished;
        const seen = await readAs(people.coordinator, async (context) => ({
          view: await viewFile(context, id, new Date()),
          rows: await needyRows(context, id, 0, 1_000),
        }));
        expect(seen.view).toMatchObject({ state: 'checked', trouble: null, counts: { unread: 0, added: 0 } });
        for (const { line, problems } of seen.rows) {
          expect(line).toBeGreaterThan(0);
          expect(problems.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: checks },
    );
    expect(await counted()).toEqual(before);
  });
});
