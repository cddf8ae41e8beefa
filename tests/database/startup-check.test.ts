import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readMigrations } from '@/lib/database/migrate/migration-files';
import { checkDatabase } from '@/lib/database/startup-check';
import { testDatabase } from '../support/database';

const { app, owner, superuser } = await testDatabase();
const client = new Client({ connectionString: superuser });
const database = new URL(app).pathname.slice(1);

beforeAll(() => client.connect());
afterAll(() => client.end());

/** Checks with a setting of this database changed meanwhile. */
const withSetting = async (assignment: string) => {
  const name = assignment.split(/\s/)[0];
  await client.query(`ALTER DATABASE "${database}" SET ${assignment}`);
  try {
    await checkDatabase(app);
  } finally {
    await client.query(
      `ALTER DATABASE "${database}" ${name === 'TimeZone' ? "SET TimeZone TO 'UTC'" : `RESET ${name}`}`,
    );
  }
};

/** An address like that of the application's role, changed in one part. */
const changed = (part: 'port' | 'hostname' | 'password' | 'pathname', value: string) => {
  const url = new URL(app);
  url[part] = value;
  return url.href;
};

describe('the check before serving', () => {
  it("passes a migrated database reached as the application's own role", async () => {
    await expect(checkDatabase(app)).resolves.toBeUndefined();
  });

  it.each([
    ['no address', undefined, /^DATABASE_URL is not set/],
    [
      'an address of something else',
      'mysql://x/y',
      /^DATABASE_URL is not an address of the form postgresql:/,
    ],
    [
      'a port where nobody listens',
      changed('port', '1'),
      'DATABASE_URL cannot be used: no PostgreSQL server answers',
    ],
    [
      'an unknown host',
      changed('hostname', 'nowhere.invalid'),
      'DATABASE_URL cannot be used: the host name is unknown.',
    ],
    [
      'a wrong password',
      changed('password', 'wrong'),
      'DATABASE_URL cannot be used: the server refuses this user and',
    ],
    [
      'an unknown database',
      changed('pathname', '/attic'),
      'DATABASE_URL cannot be used: there is no database of that',
    ],
  ])('refuses %s', async (_, url, message) => {
    await expect(checkDatabase(url)).rejects.toThrow(message);
  });

  it.each([
    [
      'a time zone other than UTC',
      "TimeZone TO 'America/New_York'",
      /^The database's time zone is America\/New_York:/,
    ],
    [
      'commits that do not wait for the disk',
      'synchronous_commit TO off',
      /^The server runs with synchronous_commit off/,
    ],
  ])('refuses %s', async (_, assignment, message) => {
    await expect(withSetting(assignment)).rejects.toThrow(message);
  });

  it.each([
    ['the superuser', superuser, /^DATABASE_URL signs in as postgres, a superuser/],
    ['the owner of the tables', owner, /^DATABASE_URL signs in as pinset_owner, which owns the tables/],
  ])('refuses %s', async (_, url, message) => {
    await expect(checkDatabase(url)).rejects.toThrow(message);
  });

  it('refuses a database without the newest migration', async () => {
    const files = [...readMigrations(), { name: '29990101000000_next', sql: '', checksum: '' }];
    await expect(checkDatabase(app, files)).rejects.toThrow(
      'Migration 29990101000000_next is missing in this database: run the migrations first.',
    );
  });

  it('finds the time zone of the database set to UTC and not left to the server', async () => {
    const { rows } = await client.query(
      `SELECT setconfig FROM pg_db_role_setting s JOIN pg_database d ON d.oid = s.setdatabase WHERE datname = $1`,
      [database],
    );
    expect(rows).toEqual([{ setconfig: ['TimeZone=UTC'] }]);
  });
});
