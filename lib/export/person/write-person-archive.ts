import 'server-only';
import { createWriteStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { stringify } from 'csv-stringify/sync';
import { ZipFile } from 'yazl';
import type { ReadContext } from '@/lib/access/context';
import { guardFormula } from '@/lib/base/formula-guard';
import { personFacts } from './person-facts';
import { personTables } from './person-rows';

/**
 * Writes what a person takes along: `person.json` and a CSV for each table with records of theirs. Answers how many rows
 * each table has.
 */
export async function writePersonArchive(
  context: ReadContext,
  personId: string,
  file: string,
  now: Date,
): Promise<Readonly<Record<string, number>>> {
  const zip = new ZipFile();
  const counts: Record<string, number> = {};
  const add = (name: string, text: string) => zip.addBuffer(Buffer.from(text), name, { mtime: now });
  add('person.json', JSON.stringify(await personFacts(context, personId, now), null, 2));
  for await (const { name, columns, rows } of personTables(context, personId)) {
    counts[name] = rows.length;
    const guarded = rows.map((row) => row.map((cell) => (cell === null ? '' : guardFormula(cell))));
    add(`data/${name}.csv`, stringify([columns, ...guarded], { record_delimiter: 'windows' }));
  }
  zip.end();
  await pipeline(zip.outputStream, createWriteStream(file));
  return counts;
}
