import { inflateRawSync } from 'node:zlib';

const localHeader = 0x04034b50;
const localMark = Buffer.from([0x50, 0x4b, 0x03, 0x04]);
const descriptor = 0x08074b50;
const deflated = 8;

/** Bytes taken by an entry that was deflated, and what comes out of it; undefined where it is more than `most`. */
function inflated(
  packed: Uint8Array,
  most: number,
): { readonly taken: number; readonly content: Uint8Array } | undefined {
  try {
    // With `info` the answer holds the engine, too, which counts what it has read.
    const { buffer, engine } = inflateRawSync(packed, { maxOutputLength: most, info: true }) as unknown as {
      buffer: Buffer;
      engine: { bytesWritten: number };
    };
    return { taken: engine.bytesWritten, content: buffer };
  } catch {
    return undefined;
  }
}

/**
 * Whether the entries of an archive (APPNOTE.TXT 4.3) unpack to at most so many bytes together. They are unpacked one
 * by one up to that limit, since the sizes that an archive tells of itself need not be true; so is the end of each.
 * Each must be `allowed`, too, and none may come after the directory that stands at the end of every archive.
 */
export function unpacksWithin(
  archive: Uint8Array,
  most: number,
  allowed: (content: Uint8Array) => boolean = () => true,
): boolean {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  const is = (at: number, signature: number) =>
    at + 4 <= archive.length && view.getUint32(at, true) === signature;
  let left = most;
  let at = 0;
  while (is(at, localHeader) && at + 30 <= archive.length) {
    const described = (view.getUint16(at + 6, true) & 8) !== 0;
    const method = view.getUint16(at + 8, true);
    const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
    if (start > archive.length) return false;
    const told = view.getUint32(at + 18, true);
    const entry =
      method === deflated
        ? inflated(archive.subarray(start), left)
        : { taken: told, content: archive.subarray(start, start + told) };
    // A stored entry whose end is told only after it cannot be followed, and no spreadsheet program writes one.
    if (entry === undefined) return false;
    if (entry.content.length > left || (method !== deflated && described) || !allowed(entry.content))
      return false;
    left -= entry.content.length;
    at = start + entry.taken;
    if (described) at = endOfDescriptor(at, is);
  }
  return Buffer.from(archive.buffer, archive.byteOffset, archive.byteLength).indexOf(localMark, at + 1) < 0;
}

/** Where the next entry begins after a data descriptor, with or without its signature, of 32 or 64 bits. */
function endOfDescriptor(at: number, is: (at: number, signature: number) => boolean): number {
  const from = is(at, descriptor) ? at + 4 : at;
  return is(from + 20, localHeader) ? from + 20 : from + 12;
}
