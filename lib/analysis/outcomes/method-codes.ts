// As many as networks have methods: they are kept for the life of a process, as near codes are. Keys are long texts, and sums of
// a thousand sites compare them tens of thousands of times.
const codes = new Map<string, number>();
const keys: string[] = [];

/** The same number for the same method key in every question. */
export function methodCode(key: string): number {
  const known = codes.get(key);
  if (known !== undefined) return known;
  codes.set(key, keys.length);
  keys.push(key);
  return keys.length - 1;
}

/** The method key of a number that `methodCode` gave. */
export function methodOfCode(code: number): string {
  return keys[code] ?? '';
}
