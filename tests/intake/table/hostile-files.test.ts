import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import { mostColumns, mostRows, readTable } from '@/lib/intake/table/read-table';
import { sheetWithin } from '@/lib/intake/table/sheet-extent';
import { unpacksWithin } from '@/lib/intake/table/unpacked-size';

const limits = { rows: mostRows, columns: mostColumns, cells: 6_000_000 };
const sheet = (...rows: string[]) =>
  Buffer.from(`<worksheet><sheetData>${rows.join('')}</sheetData></worksheet>`);
const cell = (place: string) => `<row><c r="${place}"><v>1</v></c></row>`;

function entry(name: string, content: Uint8Array): Uint8Array {
  const packed = deflateRawSync(content);
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  header.writeUInt16LE(8, 8);
  header.writeUInt32LE(packed.length, 18);
  header.writeUInt32LE(content.length, 22);
  header.writeUInt16LE(name.length, 26);
  return Buffer.concat([header, Buffer.from(name), packed]);
}

describe('a small sheet', () => {
  it.each([
    ['with a cell in the last column there is', sheet(cell('XFD1'))],
    ['with a cell in the last row there is', sheet(cell('A1'), cell('A1048576'))],
    ['with the number of a row beyond all', sheet('<row r="1e12"></row>')],
    ['with a place written as an entity', sheet(cell('&#88;FD1'))],
    ['with a place in single quotes', sheet("<row><c s='0' r = 'XFD1'><v>1</v></c></row>")],
    ['with many rows and one cell far to the right', sheet(cell('A1'), cell('GR200000'))],
    ['with more rows than may come, none numbered', sheet('<row/>'.repeat(mostRows + 1))],
  ])('%s is refused before it is read', async (_, content) => {
    expect(sheetWithin(content, limits)).toBe(false);
    expect(await readTable(entry('xl/worksheets/sheet1.xml', content), {})).toBe('table-too-long');
  });

  it('within the limits is read, whatever stands in other parts of the workbook', async () => {
    expect(
      sheetWithin(sheet(cell('A1'), '<row r="30000" spans="1:3">', '<c r="GR30000"/></row>'), limits),
    ).toBe(true);
    expect(sheetWithin(Buffer.from('<a:fillToRect r="-80000" xmlns:r="http://x"/>'), limits)).toBe(true);
  });
});

describe('an archive', () => {
  it('with an entry after its directory is refused', async () => {
    const book = await writeWorkbook([
      {
        sheet: 'A',
        data: [
          [
            { value: 'Batch', type: String },
            { value: 'Date', type: String },
          ],
        ],
      },
    ]).toBuffer();
    expect(unpacksWithin(book, 80_000_000)).toBe(true);
    const hidden = Buffer.concat([book, entry('xl/worksheets/sheet1.xml', new Uint8Array(1_000))]);
    expect(unpacksWithin(hidden, 80_000_000)).toBe(false);
    expect(await readTable(hidden, {})).toBe('table-too-long');
  });
});

describe('a text', () => {
  it('of nothing but line breaks is refused without making a row of each', async () => {
    const before = process.memoryUsage().heapUsed;
    expect(await readTable(Buffer.alloc(5_000_000, '\n'), {})).toBe('table-too-long');
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(300_000_000);
  }, 60_000);

  it('of one line without an end is refused', async () => {
    expect(await readTable(Buffer.alloc(3_000_000, 'a'), {})).toBe('table-too-long');
    expect(await readTable(Buffer.from(`a,"${'b'.repeat(3_000_000)}`), {})).toBe('table-too-long');
  }, 60_000);
});
