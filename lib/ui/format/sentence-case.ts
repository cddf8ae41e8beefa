/** Field names stand in the catalogues as inside a sentence ("Enter fresh mass"); as a label they begin with a capital. */
export function sentenceCase(text: string): string {
  const [first = ''] = text;
  return first.toLocaleUpperCase() + text.slice(first.length);
}
