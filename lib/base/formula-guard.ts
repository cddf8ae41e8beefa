/**
 * Text that a spreadsheet would take for a formula: after any number of apostrophes an equals sign, plus, minus, at
 * sign (also in their full-width form), tab, carriage return or NUL.
 */
const likeFormula = /^'*[=+\-@＝＋－＠\t\r\0]/u;
const guarded = /^'+[=+\-@＝＋－＠\t\r\0]/u;

/** Text for a cell of CSV: one apostrophe before whatever could become a formula. Numbers never come here. */
export function guardFormula(text: string): string {
  return likeFormula.test(text) ? `'${text}` : text;
}

/** Takes the apostrophe of `guardFormula` away again; any other text comes back as it is. */
export function unguardFormula(text: string): string {
  return guarded.test(text) ? text.slice(1) : text;
}
