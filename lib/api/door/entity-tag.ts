import { requestHash } from '@/lib/intake/request-hash';

/** The ETag of a record is its revision. */
export const tagOf = (revision: number) => `"${revision}"`;

/** When figures were read is no part of what they say. */
const lasting = (name: string, value: unknown) => (name === 'asOf' ? undefined : value);

/** The weak ETag of an answer that has no revision of its own. */
export function weakTagOf(body: unknown): string {
  return `W/"${requestHash(JSON.parse(JSON.stringify(body, lasting))).slice(0, 32)}"`;
}

/** Whether If-None-Match names this ETag; it compares weakly (RFC 9110, 13.1.2). */
export function namesTag(header: string | null, tag: string): boolean {
  if (header === null) return false;
  const bare = (text: string) => text.trim().replace(/^W\//, '');
  return header.trim() === '*' || header.split(',').some((one) => bare(one) === bare(tag));
}

/**
 * The revision that If-Match names. `missing`: none, or `*`, which would overwrite whatever is there; `other`: a tag that
 * no record has had.
 */
export function revisionIn(header: string | null): number | 'missing' | 'other' {
  if (header === null || header.trim() === '' || header.trim() === '*') return 'missing';
  const [, revision] = /^"([1-9]\d{0,8})"$/.exec(header.trim()) ?? [];
  return revision === undefined ? 'other' : Number(revision);
}
