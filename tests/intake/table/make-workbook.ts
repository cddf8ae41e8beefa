import { buffer } from 'node:stream/consumers';
import { ZipFile } from 'yazl';

type Parts = {
  /** The element of the sheet's rows and what stands in it. */
  readonly sheet: string;
  readonly texts?: string;
  readonly styles?: string;
  readonly book?: string;
  /** Further parts by their names. */
  readonly others?: Readonly<Record<string, Uint8Array>>;
};

const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const kinds = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const relations = (...of: readonly (readonly [id: string, type: string, target: string])[]) =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${of
    .map(([id, type, target]) => `<Relationship Id="${id}" Type="${kinds}/${type}" Target="${target}"/>`)
    .join('')}</Relationships>`;

/** A workbook of one sheet from the XML of its parts, as no program would write it. */
export async function makeWorkbook({
  sheet,
  texts,
  styles,
  book = '',
  others = {},
}: Parts): Promise<Uint8Array> {
  const zip = new ZipFile();
  const add = (name: string, text: string) =>
    zip.addBuffer(Buffer.from(`<?xml version="1.0"?>${text}`), name);
  add('_rels/.rels', relations(['r1', 'officeDocument', 'xl/workbook.xml']));
  add(
    'xl/_rels/workbook.xml.rels',
    relations(
      ['r1', 'worksheet', 'worksheets/sheet1.xml'],
      ['r2', 'sharedStrings', '/xl/sharedStrings.xml'],
      ['r3', 'styles', 'styles.xml'],
      ['r4', 'chartsheet', 'chartsheets/sheet1.xml'],
    ),
  );
  add(
    'xl/workbook.xml',
    `<workbook ${main} xmlns:rel="${kinds}">${book}<sheets><sheet name="Chart" sheetId="1" rel:id="r4"/><sheet name="A" sheetId="2" rel:id="r1"/></sheets></workbook>`,
  );
  if (texts !== undefined) add('xl/sharedStrings.xml', `<sst ${main}>${texts}</sst>`);
  if (styles !== undefined) add('xl/styles.xml', `<styleSheet ${main}>${styles}</styleSheet>`);
  add(
    'xl/worksheets/sheet1.xml',
    sheet.replace(/^<(\w+:)?worksheet/, (tag) => `${tag} ${main}`),
  );
  for (const [name, bytes] of Object.entries(others)) zip.addBuffer(Buffer.from(bytes), name);
  zip.end();
  return new Uint8Array(await buffer(zip.outputStream));
}
