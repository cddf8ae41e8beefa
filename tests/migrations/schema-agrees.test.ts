import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { migrationsFolder } from '@/lib/database/migrate/migration-files';
import { schemaDrift } from '@/lib/database/migrate/schema-drift';
import { temporaryFolder } from '../support/temporary-folder';

const access = inject('testServer');
const place = temporaryFolder('schema');
const schema = readFileSync(path.resolve(migrationsFolder, '../schema.prisma'), 'utf8');

const driftFrom = async (changed: string) => {
  expect(changed).not.toBe(schema);
  const file = path.join(mkdtempSync(path.join(place, 'each-')), 'schema.prisma');
  writeFileSync(file, changed);
  return schemaDrift(access, migrationsFolder, file);
};

describe('the migrations and schema.prisma', () => {
  it('describe the same tables, columns, keys, indexes and enums', async () => {
    expect(await schemaDrift(access)).toMatchObject({ agrees: true });
  });

  it('are seen to disagree about a column that only the schema has', async () => {
    const drift = await driftFrom(schema.replace(/model Site \{/, 'model Site {\n  altitudeMetres Int?'));
    expect(drift).toMatchObject({
      agrees: false,
      sql: expect.stringContaining('ADD COLUMN     "altitudeMetres"'),
    });
  });

  it('are seen to disagree about a column that only the migrations have', async () => {
    const drift = await driftFrom(schema.replace(/(model Site \{[^}]*?)\n +name +String[^\n]*/, '$1'));
    expect(drift).toMatchObject({ agrees: false, sql: expect.stringContaining('DROP COLUMN "name"') });
  });

  it('are seen to disagree about a word of an enum', async () => {
    const drift = await driftFrom(schema.replace(/enum ContainerKind \{/, 'enum ContainerKind {\n  barrel'));
    expect(drift).toMatchObject({ agrees: false, sql: expect.stringContaining("ADD VALUE 'barrel'") });
  });
});
