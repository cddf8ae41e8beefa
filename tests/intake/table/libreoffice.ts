import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const program = (process.env.PATH ?? '')
  .split(path.delimiter)
  .map((folder) => path.join(folder, 'soffice'))
  .find((file) => existsSync(file));

/** Whether LibreOffice is on this machine; its package is not one that a build needs. */
export const hasLibreOffice = program !== undefined;

// Quoted where needed, UTF-8, cells as they are shown.
const asCsv = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true';
const filters = { csv: asCsv, xlsx: 'xlsx:Calc MS Excel 2007 XML' } as const;

/** Opens a file in LibreOffice, with a profile of its own, and answers what that saves of it. */
export async function savedByLibreOffice(
  content: Uint8Array | string,
  from: 'fods' | 'csv' | 'xlsx',
  to: 'csv' | 'xlsx',
): Promise<Buffer> {
  if (program === undefined) throw new Error('LibreOffice is not installed');
  const folder = await mkdtemp(path.join(tmpdir(), 'pinset-office-'));
  const out = path.join(folder, 'out');
  try {
    await mkdir(out);
    await writeFile(path.join(folder, `table.${from}`), content);
    const profile = `-env:UserInstallation=${pathToFileURL(path.join(folder, 'profile'))}`;
    await promisify(execFile)(
      program,
      [
        profile,
        '--headless',
        '--convert-to',
        filters[to],
        '--outdir',
        out,
        path.join(folder, `table.${from}`),
      ],
      { timeout: 120_000, env: { ...process.env, HOME: folder, LC_ALL: 'C.UTF-8' } },
    );
    return await readFile(path.join(out, `table.${to}`));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
