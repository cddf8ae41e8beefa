/** Orders codes as people count: M-CORN-2 before M-CORN-10. */
export function byCode(language: string): (a: string, b: string) => number {
  return new Intl.Collator(language, { numeric: true }).compare;
}
