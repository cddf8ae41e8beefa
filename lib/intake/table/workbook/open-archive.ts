import 'server-only';
import type { Readable } from 'node:stream';
import { type Entry, fromBufferPromise, type ZipFile } from 'yauzl';

/** What reaches further than any table may is not read to its end. */
export class TooLong extends Error {}

export type Archive = {
  readonly has: (name: string) => boolean;
  /** The bytes of a part as they unpack; all parts together may be so many at most. */
  readonly read: (name: string) => Promise<AsyncIterable<Uint8Array>>;
};

// A workbook has a few parts and one of each sheet, picture and drawing.
const mostEntries = 10_000;

function entriesOf(zip: ZipFile): Promise<Map<string, Entry>> {
  return new Promise((resolve, reject) => {
    const entries = new Map<string, Entry>();
    zip.on('entry', (entry: Entry) => {
      entries.set(entry.fileName, entry);
      if (entries.size > mostEntries) reject(new TooLong('entries'));
      else zip.readEntry();
    });
    zip.once('end', () => resolve(entries));
    zip.once('error', reject);
    zip.readEntry();
  });
}

function streamOf(zip: ZipFile, entry: Entry): Promise<Readable> {
  return new Promise((resolve, reject) => {
    zip.openReadStream(entry, (error, stream) => (error ? reject(error) : resolve(stream)));
  });
}

/** Opens an archive (APPNOTE.TXT 4.3). What its parts say of their sizes is not believed: bytes count as they come. */
export async function openArchive(bytes: Uint8Array, mostUnpacked: number): Promise<Archive> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const zip = await fromBufferPromise(buffer, { lazyEntries: true });
  const entries = await entriesOf(zip);
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
      return counted(await streamOf(zip, entry));
    },
  };
}
