import { createHash, type Hash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { inProject } from './project';

const skipped = new Set(['node_modules', 'generated', '.next', '.git', '.pinset']);

function addTo(hash: Hash, place: string, name: string) {
  const file = path.join(place, name);
  for (const entry of readdirSync(file, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (skipped.has(entry.name)) continue;
    if (entry.isDirectory()) addTo(hash, file, entry.name);
    else if (entry.isFile()) addFile(hash, path.join(file, entry.name));
  }
}

const addFile = (hash: Hash, file: string) =>
  hash.update(file).update('\0').update(readFileSync(file)).update('\0');

/** A fingerprint of the contents of `names`, files or folders of the project; those that are absent count too. */
export function hashOf(...names: string[]): string {
  const hash = createHash('sha256');
  for (const name of names) {
    const file = inProject(name);
    if (!existsSync(file)) hash.update(`${name} is absent\0`);
    else if (path.extname(name)) addFile(hash, file);
    else addTo(hash, inProject(), name);
  }
  return hash.digest('hex');
}
