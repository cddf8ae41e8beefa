/** The letter of a column as a spreadsheet has it: 0 is A, 26 is AA. */
function columnLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetter(Math.floor(index / 26) - 1) + last;
}

/** How a column is called: its own heading, else its letter. */
export function columnName(
  headers: readonly string[],
  index: number,
  unnamed: (letter: string) => string,
): string {
  return headers[index]?.trim() || unnamed(columnLetter(index));
}
