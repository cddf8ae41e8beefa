import { Client } from 'pg';
import type { DatabaseUrls } from './database-urls';
import type { EmbeddedServer } from './embedded-server';

/** Runs one statement that must stand alone, such as CREATE DATABASE, as the superuser of `server`. */
export async function asSuperuser(server: EmbeddedServer, sql: string): Promise<void> {
  const client = new Client({ connectionString: server.urls('postgres').superuser });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

/**
 * Makes the empty database `name` with the roles' rights in it, or a copy of `template`. The copy has the
 * template's contents; the rights and the time zone of a database itself are not copied and are given anew.
 */
export async function makeDatabase(
  server: EmbeddedServer,
  name: string,
  template?: string,
): Promise<DatabaseUrls> {
  await asSuperuser(server, `CREATE DATABASE "${name}" ${template ? `TEMPLATE "${template}"` : ''}`);
  await server.giveRoles(name);
  return server.urls(name);
}

/** Drops the database `name`, ending whoever is still connected to it. */
export const dropDatabase = (server: EmbeddedServer, name: string) =>
  asSuperuser(server, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);

/** Lends `work` an empty database that is dropped afterwards. */
export async function withScratchDatabase<T>(
  server: EmbeddedServer,
  work: (urls: DatabaseUrls) => Promise<T>,
): Promise<T> {
  const name = `scratch_${process.pid}_${Date.now().toString(36)}`;
  try {
    return await work(await makeDatabase(server, name));
  } finally {
    await dropDatabase(server, name);
  }
}
