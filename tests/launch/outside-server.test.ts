import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createCluster } from '@/lib/database/embedded/create-cluster';
import { asSuperuser, databaseUrls, type ServerAccess } from '@/lib/database/embedded/server-access';
import { serverHome } from '@/lib/database/embedded/server-home';
import { startServer, stopServer } from '@/lib/database/embedded/start-server';
import { readMigrations } from '@/lib/database/migrate/migration-files';
import { prepareOutsideServer } from '@/lib/database/outside-server';
import { checkDatabase } from '@/lib/database/startup-check';

const folder = mkdtempSync(path.join(tmpdir(), 'outside-'));
const home = await serverHome(folder);
const passwords = { postgres: 'superuser', pinset_owner: 'owner', pinset_app: 'p:ss/word' };
let access: ServerAccess;

const appUrl = (database: string) => {
  const url = new URL(databaseUrls(access, database).superuser);
  url.username = 'pinset_app';
  url.password = passwords.pinset_app;
  return url.href;
};

/** A server on which nobody has prepared anything. */
beforeAll(async () => {
  createCluster(home, passwords.postgres);
  access = { passwords, port: await startServer(home, passwords, folder) };
  await asSuperuser(access, 'postgres', 'CREATE DATABASE garden');
}, 60_000);

afterAll(() => {
  stopServer(home);
  rmSync(folder, { recursive: true });
});

describe('a PostgreSQL server of somebody else', () => {
  it('is named in one line with the statements to run when the owner may not make the roles', async () => {
    await asSuperuser(access, 'postgres', "CREATE ROLE pinset_owner LOGIN PASSWORD 'owner'");
    await asSuperuser(access, 'postgres', 'ALTER DATABASE garden OWNER TO pinset_owner');
    await expect(
      prepareOutsideServer(databaseUrls(access, 'garden').owner, appUrl('garden')),
    ).rejects.toThrow(
      /^The roles of Pinset are missing: run `psql -d <database> -f lib\/database\/roles.sql` once as a superuser/,
    );
  });

  it('is prepared and migrated where the owner may make the roles, and passes the check before serving', async () => {
    const applied = await prepareOutsideServer(databaseUrls(access, 'garden').superuser, appUrl('garden'));
    expect(applied).toEqual(readMigrations().map(({ name }) => name));
    await expect(checkDatabase(appUrl('garden'))).resolves.toBeUndefined();
    expect(await prepareOutsideServer(databaseUrls(access, 'garden').superuser, appUrl('garden'))).toEqual(
      [],
    );
  });

  it('says which setting is wrong when the owner cannot sign in', async () => {
    const url = databaseUrls(
      { ...access, passwords: { ...passwords, pinset_owner: 'wrong' } },
      'garden',
    ).owner;
    await expect(prepareOutsideServer(url, appUrl('garden'))).rejects.toThrow(
      'DATABASE_OWNER_URL cannot be used: the server refuses this user and password.',
    );
  });
});
