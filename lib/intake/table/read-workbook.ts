import 'server-only';
import { openArchive, TooLong } from './workbook/open-archive';
import { readSheet, type SheetLimits } from './workbook/read-sheet';
import { sharedTexts, stylesOfDates } from './workbook/shared-parts';
import { workbookParts } from './workbook/workbook-parts';

export type ReadWorkbook = {
  readonly sheets: readonly string[];
  /** Which of them was read. */
  readonly sheet: number;
  readonly rows: string[][];
};

/** The first bytes of every workbook, which is an archive. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;
}

/**
 * One sheet of a workbook as text, the first where there is no such one, read as it unpacks: of what is unpacked only
 * the texts of cells are kept. A code says why there is none.
 */
export async function readWorkbook(
  bytes: Uint8Array,
  wanted: number,
  most: SheetLimits & { readonly unpacked: number },
): Promise<ReadWorkbook | 'table-unreadable' | 'table-too-long'> {
  try {
    const archive = await openArchive(bytes, most.unpacked);
    const { sheets, from1904, texts, styles } = await workbookParts(archive);
    const sheet = sheets[wanted] === undefined ? 0 : wanted;
    const chosen = sheets[sheet];
    if (chosen === undefined) return 'table-unreadable';
    const reading = {
      texts: await sharedTexts(archive, texts, most.text),
      dates: await stylesOfDates(archive, styles),
      from1904,
    };
    const rows = await readSheet(await archive.read(chosen.part), reading, most);
    return { sheets: sheets.map(({ name }) => name), sheet, rows };
  } catch (error) {
    return error instanceof TooLong ? 'table-too-long' : 'table-unreadable';
  }
}
