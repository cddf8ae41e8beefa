import 'server-only';
import type { Readable } from 'node:stream';
import { parse } from 'csv-parse';
import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { z } from 'zod';

const descriptorInput = z.object({
  $schema: z.string(),
  title: z.string(),
  network: z.record(z.string(), z.string().nullable()),
  resources: z.array(
    z.object({
      path: z.string().regex(/^data\/[a-z_]+\.csv$/),
      rows: z.number().int().min(0),
      schema: z.object({ fields: z.array(z.object({ name: z.string() })) }),
    }),
  ),
});

export type PackageDescriptor = z.output<typeof descriptorInput>;

export type OpenedPackage = {
  readonly descriptor: PackageDescriptor;
  /** The rows of a table, a part at a time, by their columns; blanks are null. */
  readonly rows: (path: string) => AsyncGenerator<Record<string, string | null>[]>;
  readonly close: () => void;
};

const mostDescriptorBytes = 5_000_000;
const rowsPerPart = 2000;

function entriesOf(zip: ZipFile): Promise<Map<string, Entry>> {
  return new Promise((resolve, reject) => {
    const entries = new Map<string, Entry>();
    zip.on('entry', (entry: Entry) => {
      entries.set(entry.fileName, entry);
      zip.readEntry();
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

/** Opens an archive made by `writePackage`; throws with the reason for anything else. */
export async function openPackage(file: string): Promise<OpenedPackage> {
  const zip = await openPromise(file, { lazyEntries: true, autoClose: false });
  const entries = await entriesOf(zip);
  const entryOf = (name: string) => {
    const entry = entries.get(name);
    if (!entry) throw new Error(`the archive has no ${name}`);
    return entry;
  };
  const described = entryOf('datapackage.json');
  if (described.uncompressedSize > mostDescriptorBytes) throw new Error('datapackage.json is too large');
  const chunks: Buffer[] = [];
  for await (const chunk of await streamOf(zip, described)) chunks.push(chunk as Buffer);
  const descriptor = descriptorInput.parse(JSON.parse(Buffer.concat(chunks).toString('utf8')));
  return {
    descriptor,
    async *rows(path) {
      const source = await streamOf(zip, entryOf(path));
      const lines = source.pipe(
        parse({ columns: true, cast: (value, { header }) => (header || value !== '' ? value : null) }),
      );
      source.once('error', (error: Error) => lines.destroy(error));
      let part: Record<string, string | null>[] = [];
      for await (const line of lines) {
        part.push(line as Record<string, string | null>);
        if (part.length === rowsPerPart) {
          yield part;
          part = [];
        }
      }
      if (part.length > 0) yield part;
    },
    close: () => zip.close(),
  };
}
