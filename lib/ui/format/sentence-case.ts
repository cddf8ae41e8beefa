/**
 * Field names stand in the catalogues as inside a sentence ("Enter fresh mass"); as a label they begin with a
 * capital. "pH of the water" and the like keep their writing.
 */
export function sentenceCase(text: string): string {
  const [first = '', second = ''] = text;
  return second === second.toLowerCase() ? first.toUpperCase() + text.slice(first.length) : text;
}
