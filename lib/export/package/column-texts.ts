import { batchTexts } from './texts/batch-texts';
import type { ColumnText, TableTexts } from './texts/column-text';
import { commonTexts } from './texts/common-texts';
import { programmeTexts } from './texts/programme-texts';
import { stockTexts } from './texts/stock-texts';

/** Columns by their table, where they mean more than `commonTexts` says. */
export const tableTexts: TableTexts = { ...stockTexts, ...batchTexts, ...programmeTexts };

/** The text of a column; undefined where nobody has described it, which a test refuses. */
export function columnText(table: string, column: string): ColumnText | undefined {
  return tableTexts[table]?.[column] ?? commonTexts[column];
}
