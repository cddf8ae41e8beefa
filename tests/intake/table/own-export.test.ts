import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { saveTable } from '@/lib/export/saved/save-table';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { now } from '../../access/world';
import { type GrownWorld, grownWorld } from '../../export/grown-world';
import { testDatabase } from '../../support/database';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
let world: GrownWorld;

beforeAll(async () => {
  world = await grownWorld(superuser);
}, 120_000);

const tables = [
  ['harvests', 'harvests'],
  ['findings', 'findings'],
  ['batches', 'batches'],
  ['treatments', 'treatments'],
  ['substrate-lots', 'substrate_lots'],
  ['spawn-lots', 'spawn_lots'],
  ['sites', 'sites'],
] as const;

describe.each([
  ['English', 'en', 'en-US'],
  ['Spanish', 'es', 'es-US'],
] as const)('a list saved in %s', (_name, language, region) => {
  it.each(tables)('of %s is understood, and adds nothing to where it came from', async (table, kind) => {
    const { coordinator } = world.people;
    for (const format of ['csv', 'xlsx'] as const) {
      const made = await saveTable(coordinator, table, {}, format, writtenWords(wordsFor(language, region)));
      if (made.kind !== 'saved') throw new Error(made.kind);
      const bytes = await readFile(made.file);
      await rm(path.dirname(made.file), { recursive: true });
      const file = await bring(coordinator, { kind, now }, bytes);
      const { missing } = await file.look();
      expect(missing).toEqual([]);
      const { counts } = await file.check();
      // A batch of several lots has no one lot to name: such a row needs a person.
      const wrong = (await file.wrong()).filter(([, field]) => field !== 'components.0.lotId');
      expect(wrong).toEqual([]);
      expect(counts.new).toBe(0);
      expect(counts.there + (kind === 'batches' ? counts.needs : 0)).toBe(made.rows);
    }
  });
});
