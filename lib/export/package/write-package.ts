import 'server-only';
import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { stringify } from 'csv-stringify';
import { ZipFile } from 'yazl';
import type { ReadContext } from '@/lib/access/context';
import { guardFormula } from '@/lib/base/formula-guard';
import { newId } from '@/lib/base/new-id';
import { describePackage, type Licence, type WrittenTable } from './describe-package';
import { packageTableNames } from './package-tables';
import { readColumns, type StoredTable } from './read-columns';
import { readRows } from './read-rows';

const csvOptions = { record_delimiter: 'windows' } as const;

/** The CSV of one table, counted and hashed on its way. */
function tableStream(
  context: ReadContext,
  table: StoredTable,
  siteId: string | undefined,
  done: (written: WrittenTable) => void,
  fail: (error: Error) => void,
) {
  const isText = table.columns.map(({ type, categories }) => type === 'string' && categories === null);
  const hash = createHash('sha256');
  let rows = 0;
  let bytes = 0;
  async function* lines() {
    yield table.columns.map(({ column }) => column);
    for await (const part of readRows(context, table, siteId)) {
      rows += part.length;
      for (const row of part)
        yield row.map((cell, index) => (cell !== null && isText[index] ? guardFormula(cell) : cell));
    }
  }
  const counted = new Transform({
    transform(chunk: Buffer, _encoding, next) {
      bytes += chunk.byteLength;
      hash.update(chunk);
      next(null, chunk);
    },
    flush(next) {
      done({ table, rows, bytes, sha256: hash.digest('hex') });
      next();
    },
  });
  const source = Readable.from(lines());
  const csv = stringify(csvOptions);
  pipeline(source, csv, counted).catch(fail);
  return counted;
}

async function networkColumns(context: ReadContext): Promise<Record<string, string | null>> {
  const { columns } = await readColumns(context, 'network');
  const told = columns.filter(({ column }) => !['id', 'created_at', 'revision'].includes(column));
  const cells = told.map(({ column }) => `"${column}"::text`).join(', ');
  const [row] = await context.db.$queryRawUnsafe<Record<string, string | null>[]>(
    `select ${cells} from public.network where id = $1::uuid`,
    context.actor.networkId,
  );
  return row ?? {};
}

export type PackageOptions = {
  readonly licence: Licence;
  readonly softwareVersion: string;
  readonly now: Date;
  /** Only the records of this site, and what they refer to. */
  readonly siteId?: string;
};

/** Writes the actor's whole network as one archive: `datapackage.json` and a CSV for each table. */
export async function writePackage(
  context: ReadContext,
  file: string,
  { licence, softwareVersion, now, siteId }: PackageOptions,
): Promise<readonly WrittenTable[]> {
  const network = await networkColumns(context);
  const written: WrittenTable[] = [];
  const zip = new ZipFile();
  // The archive waits for ever for a table that broke off, so what went wrong ends the writing here.
  const stop = new AbortController();
  const fail = (error: Error) => stop.abort(error);
  zip.on('error', fail);
  for (const name of packageTableNames) {
    const table = await readColumns(context, name);
    zip.addReadStreamLazy(`data/${name}.csv`, { mtime: now }, (give) =>
      give(
        null,
        tableStream(context, table, siteId, (one) => written.push(one), fail),
      ),
    );
  }
  zip.addReadStreamLazy('datapackage.json', { mtime: now }, (give) => {
    const facts = { network, id: newId(), createdAt: now, licence, softwareVersion };
    give(null, Readable.from([Buffer.from(JSON.stringify(describePackage(facts, written), null, 2))]));
  });
  zip.end();
  try {
    await pipeline(zip.outputStream, createWriteStream(file), { signal: stop.signal });
  } catch (error) {
    throw stop.signal.aborted ? stop.signal.reason : error;
  }
  return written;
}
