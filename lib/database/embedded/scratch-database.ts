import { asSuperuser, type DatabaseUrls, databaseUrls, giveRoles, type ServerAccess } from './server-access';

/**
 * Makes the empty database `name` with the roles' rights in it, or a copy of `template`. The copy has the
 * template's contents; the rights and the time zone of a database itself are not copied and are given anew.
 */
export async function makeDatabase(
  access: ServerAccess,
  name: string,
  template?: string,
): Promise<DatabaseUrls> {
  await asSuperuser(
    access,
    'postgres',
    `CREATE DATABASE "${name}" ${template ? `TEMPLATE "${template}"` : ''}`,
  );
  await giveRoles(access, name);
  return databaseUrls(access, name);
}

/** Drops the database `name`, ending whoever is still connected to it. */
export async function dropDatabase(access: ServerAccess, name: string): Promise<void> {
  await asSuperuser(access, 'postgres', `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
}

/** Lends `work` an empty database that is dropped afterwards. */
export async function withScratchDatabase<T>(
  access: ServerAccess,
  work: (urls: DatabaseUrls) => Promise<T>,
): Promise<T> {
  const name = `scratch_${process.pid}_${Date.now().toString(36)}`;
  try {
    return await work(await makeDatabase(access, name));
  } finally {
    await dropDatabase(access, name);
  }
}
