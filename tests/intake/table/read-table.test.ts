import { describe, expect, it } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import { guessRecordLayout, type UsualWriting } from '@/lib/intake/table/guess-layout';
import { fieldsOfKind } from '@/lib/intake/table/kinds/fields-of-kind';
import { plainWords } from '@/lib/intake/table/plain-words';
import { readTable } from '@/lib/intake/table/read-table';
import type { Messages } from '@/lib/ui/messages/en';
import { loadMessages } from '@/lib/ui/messages/load-messages';

const usual: UsualWriting = { dateOrder: 'mdy', decimal: 'point', units: ['lb', 'gal', 'fahrenheit'] };

async function understood(bytes: Uint8Array, from: UsualWriting = usual) {
  const read = await readTable(bytes, {});
  if (typeof read === 'string') throw new Error(read);
  const layout = guessRecordLayout(read.rows, fieldsOfKind.harvests, read.written, from);
  return { layout, rows: read.rows };
}

describe('a table of text', () => {
  it.each([
    ['utf-8', 'utf8', '\ufeff'],
    ['utf-16le', 'utf16le', '\ufeff'],
    ['windows-1252', 'latin1', ''],
  ] as const)('in %s is read with its accents', async (encoding, as, mark) => {
    const text = `${mark}Lote;Fecha de cosecha;Peso (kg);Notas\nA-1;3/4/2026;1,25;Jardín de Peñón\n`;
    const { layout, rows } = await understood(Buffer.from(text, as));
    expect(layout).toMatchObject({ encoding, delimiter: 'semicolon', decimal: 'comma', headerLine: 1 });
    expect(rows[1]).toEqual(['A-1', '3/4/2026', '1,25', 'Jardín de Peñón']);
  });

  it('with titles above the names of its columns, and a blank line between its rows, is understood', async () => {
    const text =
      'Mill Lane Garden,,\n2026,,\nBatch,Picked on,Weight\nA-1,2026-05-31,350\n,,\nA-2,2026-06-01,410\n';
    const { layout } = await understood(Buffer.from(text));
    expect(layout).toMatchObject({ headerLine: 3, dateOrder: 'ymd' });
    expect(layout.columns).toEqual([
      { field: 'batch', unit: null },
      { field: 'weighedOn', unit: null },
      { field: 'fresh', unit: 'g' },
    ]);
  });

  it('tells the order of its dates by the days that can only be days', async () => {
    const dates = (one: string, two: string) =>
      Buffer.from(`Batch\tDate\tKg\nA\t${one}\t1.5\nA\t${two}\t1.5\n`);
    expect((await understood(dates('05/04/2026', '25/04/2026'))).layout.dateOrder).toBe('dmy');
    expect((await understood(dates('05/04/2026', '04/25/2026'))).layout.dateOrder).toBe('mdy');
    const unsure = dates('05/04/2026', '06/04/2026');
    expect((await understood(unsure)).layout.dateOrder).toBe('mdy');
    expect((await understood(unsure, { ...usual, dateOrder: 'dmy' })).layout.dateOrder).toBe('dmy');
  });

  it('says why it cannot be read', async () => {
    expect(await readTable(Buffer.from(' \n,,\n'), {})).toBe('table-empty');
    expect(await readTable(Buffer.from('PK\u0003\u0004 not a workbook'), {})).toBe('table-unreadable');
    expect(await readTable(Buffer.from('a,'.repeat(500)), {})).toBe('table-too-long');
  });
});

describe('a workbook', () => {
  it('is read with its numbers and days', async () => {
    const text = (value: string) => ({ value, type: String });
    const day = { value: new Date('2026-05-31T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' };
    const bytes = await writeWorkbook([
      {
        sheet: 'Harvest',
        data: [
          [text('Batch'), text('Harvest date'), text('Fresh (kg)')],
          [text('A-1'), day, { value: 1.25, type: Number }],
        ],
      },
      { sheet: 'Notes', data: [[text('nothing')]] },
    ]).toBuffer();
    const { layout, rows } = await understood(bytes);
    expect(rows[1]).toEqual(['A-1', '2026-05-31', '1.25']);
    expect(layout).toMatchObject({ format: 'xlsx', sheets: ['Harvest', 'Notes'], decimal: 'point' });
  });
});

describe('the words of a table', () => {
  it('are those of the catalogues, too, in both languages', () => {
    type Words = Messages['vocabulary'] & { readonly role: Messages['access']['role'] };
    const groups: Readonly<Record<string, (words: Words) => Readonly<Record<string, string>>>> = {
      containerKind: (words) => words.containerKind,
      trimState: (words) => words.trimState,
      sign: (words) => words.contaminationSign,
      stage: (words) => words.cropStage,
      action: (words) => words.findingAction,
      moistureSource: (words) => words.moistureSource,
      form: (words) => words.spawnForm,
      kind: (words) => words.siteKind,
      readingPlace: (words) => words.readingPlace,
      role: (words) => words.role,
    };
    const unknown = (['en', 'es'] as const).flatMap((language) => {
      const { vocabulary, access } = loadMessages(language);
      const words: Words = { ...vocabulary, role: access.role };
      return Object.values(fieldsOfKind)
        .flat()
        .flatMap((field) => {
          if (field.cell !== 'choice') return [];
          const group = groups[field.name]?.(words) ?? {};
          return Object.entries(field.options).filter(
            ([value, known]) => ![plainWords(value), ...known].includes(plainWords(group[value] ?? '?')),
          );
        });
    });
    expect(unknown).toEqual([]);
  });
});
