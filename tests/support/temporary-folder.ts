import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll } from 'vitest';

/** A directory for the tests of one file, gone when they are through. To be called at the top of the file or of a `describe`. */
export function temporaryFolder(name: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), `${name}-`));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
