import type { Readable } from 'node:stream';
import type { Entry, ZipFile } from 'yauzl';

/** The parts of an opened archive by name; `tooMany` is thrown at more than `most`. The archive is opened with lazy entries. */
export function zipParts(
  zip: ZipFile,
  limit?: { readonly most: number; readonly tooMany: () => Error },
): Promise<Map<string, Entry>> {
  return new Promise((resolve, reject) => {
    const parts = new Map<string, Entry>();
    zip.on('entry', (entry: Entry) => {
      parts.set(entry.fileName, entry);
      if (limit && parts.size > limit.most) reject(limit.tooMany());
      else zip.readEntry();
    });
    zip.once('end', () => resolve(parts));
    zip.once('error', reject);
    zip.readEntry();
  });
}

/** The bytes of a part as they unpack. */
export function zipStream(zip: ZipFile, entry: Entry): Promise<Readable> {
  return new Promise((resolve, reject) => {
    zip.openReadStream(entry, (error, stream) => (error ? reject(error) : resolve(stream)));
  });
}
