import { describe, expect, it } from 'vitest';
import { mostRows, readTable } from '@/lib/intake/table/read-table';
import { makeWorkbook } from './make-workbook';

const sheet = (...rows: string[]) => `<worksheet><sheetData>${rows.join('')}</sheetData></worksheet>`;
const cell = (place: string) => `<row><c r="${place}"><v>1</v></c></row>`;
const read = async (content: string) => readTable(await makeWorkbook({ sheet: content }), {});

describe('a small sheet', () => {
  it.each([
    ['with a cell in the last column there is', sheet(cell('XFD1'))],
    ['with a cell in the last row there is', sheet(cell('A1'), cell('A1048576'))],
    ['with the number of a row beyond all', sheet('<row r="1e12"></row>')],
    ['with a row that has no number', sheet('<row r="-1"></row>')],
    ['with a place that has no column', sheet(cell('7'))],
    ['with a place written as an entity', sheet(cell('&#88;FD1'))],
    ['with a place in single quotes', sheet("<row><c s='0' r = 'XFD1'><v>1</v></c></row>")],
    ['with many rows and one cell far to the right', sheet(cell('A1'), cell('GR200000'))],
    ['with more rows than may come, none numbered', sheet('<row/>'.repeat(mostRows + 1))],
  ])('%s is not read to its end', async (_, content) => {
    expect(await read(content)).toBe('table-too-long');
  });

  it('within the limits is read, whatever stands in its other elements', async () => {
    const wide = sheet(cell('A1'), '<row r="30000" spans="1:3">', '<c r="GR30000"/></row>');
    expect(await read(wide)).toMatchObject({ rows: [['1']] });
    const drawn = '<a:fillToRect r="-80000" xmlns:r="http://x" xmlns:a="http://y"/></worksheet>';
    expect(await read(sheet(cell('A1')).replace('</worksheet>', drawn))).toMatchObject({ rows: [['1']] });
  });

  it.each([
    ['ends in the middle', sheet(cell('A1')).slice(0, -20)],
    ['names a text that is not there', sheet('<row><c r="A1" t="s"><v>7</v></c></row>')],
    [
      'uses an entity of its own',
      '<!DOCTYPE a [<!ENTITY b "c">]>'.concat(sheet('<row><c><v>&b;</v></c></row>')),
    ],
  ])('that %s is not read', async (_, content) => {
    expect(await read(content)).toBe('table-unreadable');
  });
});

describe('an archive', () => {
  it('that unpacks to more than there is room for is not unpacked to its end', async () => {
    const before = process.memoryUsage().rss;
    const blank = `${' '.repeat(90_000_000)}</worksheet>`;
    const bytes = await makeWorkbook({ sheet: `<worksheet>${blank}` });
    expect(bytes.length).toBeLessThan(200_000);
    expect(await readTable(bytes, {})).toBe('table-too-long');
    expect(process.memoryUsage().rss - before).toBeLessThan(900_000_000);
  }, 60_000);

  it('whose part is larger than it says is not read', async () => {
    const bytes = Buffer.from(await makeWorkbook({ sheet: sheet(cell('A1'), cell('A2')) }));
    const name = Buffer.from('xl/worksheets/sheet1.xml');
    // The directory, at the end, says the size 22 bytes before the name.
    bytes.writeUInt32LE(10, bytes.lastIndexOf(name) - 22);
    expect(await readTable(bytes, {})).toBe('table-unreadable');
  });

  it('with something after its directory is not read', async () => {
    const book = await makeWorkbook({ sheet: sheet(cell('A1')) });
    expect(await readTable(Buffer.concat([book, book.subarray(0, 500)]), {})).toBe('table-unreadable');
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
