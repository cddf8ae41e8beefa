/** The numbers of a column that the database wrote as the text of an array; nothing of none. */
export function numbersOf(column: string | null | undefined): number[] {
  // Faster than a JSON list of rows by the order of its length: no brackets, names or quotes about each number.
  return column ? (JSON.parse(`[${column.slice(1, -1)}]`) as number[]) : [];
}

/** The same of keys and ids, which hold no comma. */
export function keysOf(column: string | null | undefined): string[] {
  return column ? column.slice(1, -1).split(',') : [];
}
