import { plainWords } from './plain-words';

const words = new Set([
  'total',
  'totals',
  'totales',
  'grand total',
  'total general',
  'sum',
  'suma',
  'sums',
  'sumas',
]);

/** Whether a line sums up the others: it begins with a word for that, and then holds nothing but numbers. */
function isTotals(cells: readonly string[]): boolean {
  const [first, ...others] = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  if (first === undefined || !words.has(plainWords(first).replace(/ s$/, ''))) return false;
  return (
    others.length > 0 && others.every((cell) => /^[-+]?\p{Sc}?\s*\d[\d.,\s]*(%|\p{L}{1,3})?$/u.test(cell))
  );
}

/** The lines of sums below the line of names, from 1. */
export function totalsLines(rows: readonly (readonly string[])[], headerLine: number): readonly number[] {
  return rows.flatMap((cells, index) => (index >= headerLine && isTotals(cells) ? [index + 1] : []));
}
