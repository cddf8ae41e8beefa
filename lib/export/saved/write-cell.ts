import type { Cell, ColumnHead } from './saved-table';
import type { WrittenWords } from './written-words';

/** A cell in the reader's words: choices and yes or no as words, all else as it is. */
export function writtenCell(cell: Cell, column: ColumnHead, words: WrittenWords): string | number | null {
  if (cell === null) return null;
  if (typeof cell === 'boolean') return words.yesNo(cell);
  if (column.words !== undefined && typeof cell === 'string') return words.choice(column.words, cell);
  return cell;
}
