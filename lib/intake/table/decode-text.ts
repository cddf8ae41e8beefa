import type { TableEncoding } from '@/lib/growing/record-table-layout';

/** UTF-16 is told by its mark, UTF-8 by being valid; what is neither is taken for Windows-1252, which old programs save. */
export function guessEncoding(bytes: Uint8Array): TableEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return 'utf-8';
  } catch {
    return 'windows-1252';
  }
}

/** The text of a file, its byte-order mark taken off. What the encoding cannot read becomes a replacement character. */
export function decodeText(bytes: Uint8Array, encoding: TableEncoding): string {
  return new TextDecoder(encoding).decode(bytes);
}
