/** Typed words as paragraphs: an empty line parts them, however the browser ended its lines. */
export function paragraphsOf(words: string): string[] {
  return words.split(/(?:\r?\n){2,}/).filter((paragraph) => paragraph.trim() !== '');
}
