import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const folder = path.resolve(import.meta.dirname, '../../lib/growing');
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));

describe('the growing module', () => {
  it('has files to read', () => {
    expect(files.length).toBeGreaterThan(50);
  });

  it.each(files)('%s imports only its neighbours, so that it loads in a browser', (name) => {
    const text = readFileSync(path.join(folder, name), 'utf8');
    const imported = [...text.matchAll(/(?:from|import\()\s*'([^']+)'/g)].map((match) => match[1] ?? '');
    for (const one of imported) expect(one).toMatch(/^\.\/[a-z0-9-]+$/);
  });

  it.each(files)('%s asks neither the clock nor chance, and runs on old phones', (name) => {
    const text = readFileSync(path.join(folder, name), 'utf8');
    expect(text).not.toMatch(
      /new Date\(\)|Date\.now|Math\.random|process\.|\(\?<[=!]|toSorted|structuredClone/,
    );
  });
});
