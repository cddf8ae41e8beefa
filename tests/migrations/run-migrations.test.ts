import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '@/lib/database/migrate/migration-files';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import { emptyDatabase } from '../support/database';
import { temporaryFolder } from '../support/temporary-folder';

const { owner, app } = await emptyDatabase();
const client = new Client({ connectionString: owner });
beforeAll(() => client.connect());
afterAll(() => client.end());

const tables = async () => {
  const { rows } = await client.query(
    "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY 1",
  );
  return rows.map(({ name }) => name).filter((name) => name !== '_prisma_migrations');
};

const place = temporaryFolder('migrations');
let folder: string;
const write = (name: string, sql: string) => {
  mkdirSync(path.join(folder, name), { recursive: true });
  writeFileSync(path.join(folder, name, 'migration.sql'), sql);
};

beforeEach(async () => {
  folder = mkdtempSync(path.join(place, 'each-'));
  await client.query('DROP TABLE IF EXISTS _prisma_migrations, straw, spawn');
  write('20260101000000_straw', 'CREATE TABLE straw (id int); COMMENT ON TABLE straw IS $$ COMMIT; $$;');
  write('20260102000000_spawn', 'CREATE TABLE spawn (id int);');
});

describe('the migration runner', () => {
  it('applies what is missing in order and records it with its checksum', async () => {
    expect(await runMigrations(owner, folder)).toEqual(['20260101000000_straw', '20260102000000_spawn']);
    expect(await tables()).toEqual(['spawn', 'straw']);
    const { rows } = await client.query(
      'SELECT migration_name AS name, checksum, applied_steps_count AS steps FROM _prisma_migrations WHERE finished_at >= started_at ORDER BY 1',
    );
    expect(rows).toEqual(readMigrations(folder).map(({ name, checksum }) => ({ name, checksum, steps: 1 })));
  });

  it('applies nothing the second time', async () => {
    await runMigrations(owner, folder);
    expect(await runMigrations(owner, folder)).toEqual([]);
  });

  it('lets one of two runs started together do the work and the other wait for it', async () => {
    const runs = await Promise.all([runMigrations(owner, folder), runMigrations(owner, folder)]);
    expect(runs.map((applied) => applied.length).sort()).toEqual([0, 2]);
  });

  it('leaves nothing of a migration that fails in its last statement, and keeps those before it', async () => {
    write('20260102000000_spawn', 'CREATE TABLE spawn (id int); SELECT 1/0;');
    await expect(runMigrations(owner, folder)).rejects.toThrow(
      /^Migration 20260102000000_spawn failed and left nothing behind: .*division by zero/,
    );
    expect(await tables()).toEqual(['straw']);
  });

  it('refuses a migration that was edited after it was applied', async () => {
    await runMigrations(owner, folder);
    write('20260101000000_straw', 'CREATE TABLE straw (id bigint);');
    await expect(runMigrations(owner, folder)).rejects.toThrow(
      'Migration 20260101000000_straw was edited after it was applied: restore its file.',
    );
  });

  it('refuses a database with a half-applied migration', async () => {
    await runMigrations(owner, folder);
    await client.query("UPDATE _prisma_migrations SET finished_at = NULL WHERE migration_name LIKE '%spawn'");
    await expect(runMigrations(owner, folder)).rejects.toThrow(
      'Migration 20260102000000_spawn is half-applied in this database: restore the last backup.',
    );
  });

  it('refuses a database of a newer version', async () => {
    await runMigrations(owner, folder);
    await client.query(
      "UPDATE _prisma_migrations SET migration_name = '20270101000000_later' WHERE migration_name LIKE '%spawn'",
    );
    await expect(runMigrations(owner, folder)).rejects.toThrow(
      'Migration 20270101000000_later is in this database but not in this version: use the newer version.',
    );
  });

  it('refuses a new migration dated before one that is applied', async () => {
    await runMigrations(owner, folder);
    write('20260101120000_lime', 'SELECT 1;');
    await expect(runMigrations(owner, folder)).rejects.toThrow(/^Migration 20260101120000_lime sorts before/);
  });

  it('refuses a migration that ends its transaction by itself', async () => {
    write('20260103000000_own', 'SELECT 1;\n  commit ;\nSELECT 2;');
    await expect(runMigrations(owner, folder)).rejects.toThrow(
      /^Migration 20260103000000_own begins or ends a transac/,
    );
    expect(await tables()).toEqual([]);
  });

  it("cannot be run with the application's own role", async () => {
    await expect(runMigrations(app, folder)).rejects.toThrow(/permission denied for schema public/);
  });
});
