import { asSuperuser, giveRoles, type ServerAccess } from './server-access';

/** The database of the embedded server in which Pinset keeps its records. */
export const recordsDatabase = 'pinset';

/** Makes the records' database with its roles unless both exist. Handing it to its owner is the last step. */
export async function prepareDatabase(access: ServerAccess): Promise<void> {
  const [found] = await asSuperuser<{ owner: string }>(
    access,
    'postgres',
    `SELECT pg_get_userbyid(datdba) AS owner FROM pg_database WHERE datname = '${recordsDatabase}'`,
  );
  if (found?.owner === 'pinset_owner') return;
  if (!found) await asSuperuser(access, 'postgres', `CREATE DATABASE ${recordsDatabase}`);
  await giveRoles(access, recordsDatabase, true);
}
