import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';

/** `datapackage.json` of an archive, read by another library than the one that wrote it. */
export async function descriptorText(file: string): Promise<string> {
  const files = unzipSync(new Uint8Array(await readFile(file)));
  const found = files['datapackage.json'];
  if (!found) throw new Error('no datapackage.json');
  return strFromU8(found);
}
