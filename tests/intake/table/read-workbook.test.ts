import fc from 'fast-check';
import readSheets from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import { readTable } from '@/lib/intake/table/read-table';
import { isDateFormat } from '@/lib/intake/table/workbook/date-format';
import { makeWorkbook } from './make-workbook';

async function rowsOf(bytes: Uint8Array) {
  const read = await readTable(bytes, {});
  return typeof read === 'string' ? read : read.rows;
}

const date = fc.date({ min: new Date('1950-01-01'), max: new Date('2050-01-01'), noInvalidDate: true });
const cell = fc.oneof(
  fc.constant(null),
  fc.string({ maxLength: 12 }).map((value) => ({ value: value.trim() || 'a', type: String })),
  fc.constantFrom('ñ "a" <b>', '=1+1', '🍄 two', 'a\nb').map((value) => ({ value, type: String })),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => ({ value, type: Number })),
  fc.integer().map((value) => ({ value, type: Number, format: '#,##0.00' })),
  fc.boolean().map((value) => ({ value, type: Boolean })),
  date.map((value) => {
    const day = new Date(Math.floor(value.getTime() / 86_400_000) * 86_400_000);
    return { value: day, type: Date, format: 'dd/mm/yyyy' };
  }),
);

/** Blanks at the end of rows and tables say nothing. */
function trimmed(rows: readonly (readonly string[])[]) {
  const short = rows.map((row) => row.slice(0, row.findLastIndex((text) => text !== '') + 1));
  return short.slice(0, short.findLastIndex((row) => row.length > 0) + 1);
}

describe('a workbook', () => {
  it('is read as another reader reads it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 8 }),
        async (data) => {
          const bytes = await writeWorkbook([
            { sheet: 'A', data: [[{ value: 'Head', type: String }], ...data] },
          ]).toBuffer();
          const [elsewhere] = await readSheets(bytes);
          const expected = (elsewhere?.data ?? []).map((row) =>
            row.map((one) =>
              one === null ? '' : one instanceof Date ? one.toISOString().slice(0, 10) : String(one),
            ),
          );
          const rows = await rowsOf(new Uint8Array(bytes));
          if (typeof rows === 'string') throw new Error(rows);
          expect(trimmed(rows.map((row) => row.map((text) => text.trim())))).toEqual(trimmed(expected));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('keeps texts in one place or in the cell, parts of them joined, and what is read aloud apart', async () => {
    const bytes = await makeWorkbook({
      texts:
        '<si><r><rPr/><t>Oy</t></r><r><t xml:space="preserve">ster </t></r><rPh sb="0" eb="1"><t>o</t></rPh></si><si><t>a_x000D_b</t></si>',
      sheet: `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData>
        <x:row r="2"><x:c r="B2" t="s"><x:v>0</x:v></x:c><x:c t="s"><x:v>1</x:v></x:c><x:c r="E2" t="inlineStr"><x:is><x:t>in</x:t></x:is></x:c></x:row>
        <x:row><x:c t="b"><x:v>1</x:v></x:c><x:c t="str"><x:f>A1</x:f><x:v>said</x:v></x:c><x:c t="e"><x:v>#N/A</x:v></x:c><x:c><x:v>4.4000000000000004</x:v></x:c></x:row>
        </x:sheetData></x:worksheet>`,
    });
    expect(await rowsOf(bytes)).toEqual([
      [],
      ['', 'Oyster ', 'a\rb', '', 'in'],
      ['true', 'said', '#N/A', '4.4'],
    ]);
  });

  it.each([
    ['', '46173', ['2026-05-31', '2026-05-31 10:10', '1899-12-30 18:00', '46173']],
    ['<workbookPr date1904="1"/>', '44711', ['2026-05-31', '2026-05-31 10:10', '1899-12-30 18:00', '44711']],
  ])('tells days and times from numbers by their styles (%s)', async (book, day, told) => {
    const cells = [`s="1"><v>${day}`, `s="2"><v>${day}.4236111111`, 's="3"><v>0.75', `s="0"><v>${day}`];
    const bytes = await makeWorkbook({
      book,
      styles:
        '<numFmts><numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy\\ hh:mm"/></numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="20"/></cellXfs>',
      sheet: `<worksheet><sheetData><row>${cells.map((one) => `<c ${one}</v></c>`).join('')}</row></sheetData></worksheet>`,
    });
    expect(await rowsOf(bytes)).toEqual([told]);
  });

  it.each([
    ['yyyy-mm-dd', true],
    ['[$-40A]d "de" mmmm "de" yyyy;@', true],
    ['[h]:mm:ss', true],
    ['d/m/yy h:mm AM/PM', true],
    ['mm:ss.0', true],
    ['0.00', false],
    ['#,##0.00 "kg"', false],
    ['0.0%', false],
    ['General', false],
    ['[Red]0;[Blue]-0', false],
    ['0 "days"', false],
    ['@', false],
  ])('takes %s for a format of days or times: %s', (pattern, answer) => {
    expect(isDateFormat(164, pattern)).toBe(answer);
  });
});
