const longestKey = 255;

/** The key of a write, bare or as the quoted string of structured fields; undefined when there is none that can be used. */
export function idempotencyKey(header: string | null): string | undefined {
  const text = header?.trim() ?? '';
  const key = /^"(.*)"$/.exec(text)?.[1] ?? text;
  return key.length > 0 && key.length <= longestKey && /^[\x21-\x7e]+$/.test(key) ? key : undefined;
}
