import 'server-only';
import type { Readable } from 'node:stream';
import { fromBufferPromise } from 'yauzl';
import { zipParts, zipStream } from '@/lib/base/zip-parts';

/** What reaches further than any table may is not read to its end. */
export class TooLong extends Error {}

export type Archive = {
  readonly has: (name: string) => boolean;
  /** The bytes of a part as they unpack; all parts together may be so many at most. */
  readonly read: (name: string) => Promise<AsyncIterable<Uint8Array>>;
};

// A workbook has a few parts and one of each sheet, picture and drawing.
const mostEntries = 10_000;

/** Opens an archive (APPNOTE.TXT 4.3). What its parts say of their sizes is not believed: bytes count as they come. */
export async function openArchive(bytes: Uint8Array, mostUnpacked: number): Promise<Archive> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const zip = await fromBufferPromise(buffer, { lazyEntries: true });
  const entries = await zipParts(zip, { most: mostEntries, tooMany: () => new TooLong('entries') });
  let left = mostUnpacked;

  async function* counted(stream: Readable): AsyncGenerator<Uint8Array> {
    for await (const part of stream) {
      left -= part.length;
      if (left < 0) throw new TooLong('unpacked');
      yield part;
    }
  }
  return {
    has: (name) => entries.has(name),
    read: async (name) => {
      const entry = entries.get(name);
      if (entry === undefined) throw new Error(`no part ${name}`);
      return counted(await zipStream(zip, entry));
    },
  };
}
