import { createHash } from 'node:crypto';

/** JSON with the names of every object in order, so that the same content is the same text. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, one]) => [name, canonical(one)]));
}

/** SHA-256 of a JSON value, 64 hexadecimal digits; the order of names does not matter. */
export function requestHash(value: unknown): string {
  return createHash('sha256')
    .update(JSON.stringify(canonical(value)))
    .digest('hex');
}
