import 'server-only';
import { parse } from 'csv-parse';
import { openPromise } from 'yauzl';
import { z } from 'zod';
import { zipParts, zipStream } from '@/lib/base/zip-parts';

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

/** Opens an archive made by `writePackage`; throws with the reason for anything else. */
export async function openPackage(file: string): Promise<OpenedPackage> {
  const zip = await openPromise(file, { lazyEntries: true, autoClose: false });
  const entries = await zipParts(zip);
  const entryOf = (name: string) => {
    const entry = entries.get(name);
    if (!entry) throw new Error(`the archive has no ${name}`);
    return entry;
  };
  const described = entryOf('datapackage.json');
  if (described.uncompressedSize > mostDescriptorBytes) throw new Error('datapackage.json is too large');
  const chunks: Buffer[] = [];
  for await (const chunk of await zipStream(zip, described)) chunks.push(chunk as Buffer);
  const descriptor = descriptorInput.parse(JSON.parse(Buffer.concat(chunks).toString('utf8')));
  return {
    descriptor,
    async *rows(path) {
      const source = await zipStream(zip, entryOf(path));
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
